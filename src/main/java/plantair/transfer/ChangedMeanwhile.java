package plantair.transfer;

/** What was sound when it was looked through no longer is; nothing was taken in. */
final class ChangedMeanwhile extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Remarks problems;

    ChangedMeanwhile(Remarks problems) {
        super("import refused");
        this.problems = problems;
    }

    Remarks problems() {
        return problems;
    }
}
