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

    /**
     * What the connection pool says, without a state, of a connection that it closed because it was broken: a rollback then
     * covers up the failure that told it so.
     */
    private static final String GIVEN_UP = "Connection is closed";

    private DatabaseAway() {}

    static boolean isCauseOf(Throwable failure) {
        for (@Nullable Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLTransientConnectionException || cause instanceof SQLException sql && isAway(sql)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isAway(SQLException failure) {
        String state = failure.getSQLState();
        if (state == null) {
            return GIVEN_UP.equals(failure.getMessage());
        }
        return state.startsWith(CONNECTION) || state.startsWith(OPERATOR) || state.equals(CLOSED);
    }
}
