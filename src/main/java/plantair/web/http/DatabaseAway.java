package plantair.web.http;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import org.jspecify.annotations.Nullable;

/** Tells a database that cannot be reached just now from other failures. */
final class DatabaseAway {

    /** SQLSTATE class of connection exceptions; ISO/IEC 9075. */
    private static final String CONNECTION = "08";

    /** SQLSTATE class of an operator who ends the session or the server; PostgreSQL documentation, appendix A. */
    private static final String OPERATOR = "57P";

    /** H2: the database has been closed, as after a write that failed. */
    private static final String CLOSED = "90098";

    private DatabaseAway() {}

    static boolean isCauseOf(Throwable failure) {
        for (@Nullable Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLTransientConnectionException
                    || cause instanceof SQLException sql && isAway(sql.getSQLState())) {
                return true;
            }
        }
        return false;
    }

    private static boolean isAway(@Nullable String state) {
        return state != null && (state.startsWith(CONNECTION) || state.startsWith(OPERATOR) || state.equals(CLOSED));
    }
}
