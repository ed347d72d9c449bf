package planted.quantity;

/** A pure class that asks the system. */
public class AsksSystem {

    long ticks() {
        return System.nanoTime();
    }
}
