package plantair.runlog;

import java.util.stream.IntStream;

/** Why a file is no log of a run. */
public final class RefusedLog extends Exception {

    private static final long serialVersionUID = 1;

    /** Why; its words are {@code log.refused.*}. */
    public enum Reason {
        /** No text at all. */
        EMPTY,
        /** Bytes that stand for no text. */
        BINARY,
        /** More bytes than are taken. Named: how many megabytes are. */
        TOO_LARGE,
        /** More lines than are taken. Named: how many are. */
        TOO_MANY_LINES,
        /** A line of so many letters holds no readings. Named: which one, and how many are taken. */
        LONG_LINE
    }

    private final Reason reason;
    private final int[] arguments;

    RefusedLog(Reason reason, int... arguments) {
        super(reason.name());
        this.reason = reason;
        this.arguments = arguments.clone();
    }

    public Reason reason() {
        return reason;
    }

    /** What the words of the reason name. */
    public Object[] arguments() {
        return IntStream.of(arguments).boxed().toArray();
    }
}
