package slipway.store.db;

/**
 * The database cannot do what was asked: it is not there, full, locked or refuses. The message and those of its causes
 * hold statements and names of tables, never the values of a record.
 */
public final class StoreFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** A failure that the store itself has found. */
    public StoreFailure(String message) {
        super(message);
    }

    /** A failure with its cause. */
    public StoreFailure(String message, Throwable cause) {
        super(message, cause);
    }
}
