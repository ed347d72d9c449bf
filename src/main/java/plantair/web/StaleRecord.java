package plantair.web;

/** The record was changed by somebody else since the form was opened; shown as page 409. */
public final class StaleRecord extends RuntimeException {

    public StaleRecord(String message) {
        super(message);
    }
}
