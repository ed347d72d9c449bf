package plantair.web;

/** The address names a record that does not exist; shown as page 404. */
public final class NoSuchRecord extends RuntimeException {

    public NoSuchRecord(String message) {
        super(message);
    }
}
