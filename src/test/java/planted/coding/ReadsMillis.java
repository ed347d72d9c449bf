package planted.coding;

/** The time of day through the system. */
public class ReadsMillis {

    long now() {
        return System.currentTimeMillis();
    }
}
