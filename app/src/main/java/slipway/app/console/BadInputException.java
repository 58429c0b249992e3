package slipway.app.console;

/** An input that cannot be used. The message is complete and goes to the user as it is, one mistake a line. */
public final class BadInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** An input that cannot be used, with everything that is wrong with it. */
    public BadInputException(String message) {
        super(message);
    }
}
