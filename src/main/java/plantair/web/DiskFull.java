package plantair.web;

import java.io.IOException;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Tells a full disk from other failures: PostgreSQL has a code for it, a file only the words of the system. */
public final class DiskFull {

    /** SQLSTATE disk_full; PostgreSQL documentation, appendix A. */
    private static final String POSTGRES = "53100";

    /** Linux and macOS; a quota; Windows. */
    private static final List<String> WORDS =
            List.of("no space left on device", "disk quota exceeded", "not enough space on the disk");

    /** What is refused, before anything of it is written, because the disk has no room. */
    public static final class Refused extends Exception {

        private static final long serialVersionUID = 1;

        public Refused() {
            super("the disk has no room");
        }
    }

    private DiskFull() {}

    /** Whether a failure comes from a disk without room. */
    public static boolean isCauseOf(Throwable failure) {
        for (@Nullable Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof Refused
                    || cause instanceof SQLException sql && POSTGRES.equals(sql.getSQLState())
                    || cause instanceof IOException file && says(file.getMessage())) {
                return true;
            }
        }
        return false;
    }

    private static boolean says(@Nullable String message) {
        String lower = message == null ? "" : message.toLowerCase(Locale.ROOT);
        return WORDS.stream().anyMatch(lower::contains);
    }
}
