package slipway.store.backup;

/** A backup that is not what was written: cut off, changed, of something else, or sealed with another key. */
public final class DamageException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What is wrong, for the user. */
    public DamageException(String message) {
        super(message);
    }
}
