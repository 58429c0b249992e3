package slipway.store.db;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Tells a database that cannot work at the moment from a statement that is wrong. */
final class Away {
    /**
     * Classes of PostgreSQL's states (documentation of version 17, appendix A): connection, resources, object in use,
     * intervention of an operator, system.
     */
    private static final Set<String> CLASSES = Set.of("08", "53", "55", "57", "58");

    /** The server takes no writing: it is a copy, or was set so. */
    private static final String READ_ONLY = "25006";

    /** The lower byte of SQLite's codes. */
    private static final Set<SQLiteErrorCode> SQLITE = Set.of(
            SQLiteErrorCode.SQLITE_BUSY,
            SQLiteErrorCode.SQLITE_READONLY,
            SQLiteErrorCode.SQLITE_IOERR,
            SQLiteErrorCode.SQLITE_FULL,
            SQLiteErrorCode.SQLITE_CANTOPEN);

    private Away() {}

    static boolean is(Throwable failure) {
        for (@Nullable Throwable at = failure; at != null; at = at.getCause()) {
            if (at instanceof SQLiteException sqlite) {
                return SQLITE.contains(SQLiteErrorCode.getErrorCode(sqlite.getResultCode().code & 0xFF));
            }
            if (at instanceof SQLTransientConnectionException) {
                return true;
            }
            if (at instanceof SQLException sql && sql.getSQLState() != null) {
                String state = sql.getSQLState();
                return state.equals(READ_ONLY) || (state.length() == 5 && CLASSES.contains(state.substring(0, 2)));
            }
        }
        return false;
    }
}
