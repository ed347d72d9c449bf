package plantair.web;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/**
 * A failure as it is logged: its kinds and places, without its messages, since those of a database or a parser repeat what
 * somebody typed.
 */
public final class Unworded extends Exception {

    private static final long serialVersionUID = 1;

    /** Causes may go round in a circle. */
    private static final int DEEPEST = 20;

    private Unworded(Throwable failure, int depth) {
        super(kind(failure), cause(failure, depth));
        setStackTrace(failure.getStackTrace());
    }

    /** The same failure without its words. */
    public static Unworded of(Throwable failure) {
        return new Unworded(failure, 0);
    }

    private static @Nullable Throwable cause(Throwable failure, int depth) {
        @Nullable Throwable cause = failure.getCause();
        return cause == null || depth == DEEPEST ? null : new Unworded(cause, depth + 1);
    }

    private static String kind(Throwable failure) {
        String name = failure.getClass().getName();
        return failure instanceof SQLException sql
                ? "%s, SQL state %s, code %d".formatted(name, sql.getSQLState(), sql.getErrorCode())
                : name;
    }
}
