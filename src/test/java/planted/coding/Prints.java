package planted.coding;

/** Output to a standard stream. */
public class Prints {

    void print() {
        System.out.println();
    }
}
