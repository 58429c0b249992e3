package slipway.reasoning.screening;

/** What may be done while a matched rule stands, most restrictive first. */
public enum Allows {
    NOTHING("nothing"),
    /** Other care, but no nerve glides. */
    OTHER_CARE("other care"),
    CARE_WITH_LIMITS("care with limits"),
    CARE("care");

    private final String key;

    Allows(String key) {
        this.key = key;
    }

    /** The name in files. */
    public String key() {
        return key;
    }

    /** The more restrictive of the two. */
    public Allows or(Allows other) {
        return compareTo(other) <= 0 ? this : other;
    }
}
