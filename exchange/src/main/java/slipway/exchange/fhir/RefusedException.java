package slipway.exchange.fhir;

/** Something from outside that is not even looked at; says why, and never repeats what was in it. */
public final class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String reason;

    RefusedException(String reason) {
        super(reason);
        this.reason = reason;
    }

    /** Why, in a sentence for the person who gave the file. */
    public String reason() {
        return reason;
    }
}
