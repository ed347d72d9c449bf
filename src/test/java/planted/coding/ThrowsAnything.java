package planted.coding;

/** A generic exception. */
public class ThrowsAnything {

    void fail() {
        throw new RuntimeException();
    }
}
