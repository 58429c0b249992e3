package slipway.reasoning.response.propose;

/** The same id came with different content, or a report is on an exercise that was not given. */
public final class LogConflictException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    LogConflictException(String message) {
        super(message);
    }
}
