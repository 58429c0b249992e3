package slipway.store.db;

/**
 * The database cannot do what was asked: it is not there, full, locked or refuses. The message and those of its causes
 * hold statements and names of tables, never the values of a record.
 */
public final class StoreFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final boolean away;

    /** A failure that the store itself has found. */
    public StoreFailure(String message) {
        super(message);
        this.away = false;
    }

    /** A failure with its cause. */
    public StoreFailure(String message, Throwable cause) {
        super(message, cause);
        this.away = Away.is(cause);
    }

    /** Whether the database is not there, full, read-only or overloaded: the same may work later. */
    public boolean isAway() {
        return away;
    }
}
