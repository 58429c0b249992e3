package slipway.reasoning.screening;

/** By when to act on a matched rule, soonest first. */
public enum ActWithin {
    NOW("now"),
    TODAY("today"),
    THREE_DAYS("3 days"),
    TWO_WEEKS("2 weeks"),
    NEXT_VISIT("next visit");

    private final String key;

    ActWithin(String key) {
        this.key = key;
    }

    /** The name in files. */
    public String key() {
        return key;
    }

    /** The sooner of the two. */
    public ActWithin or(ActWithin other) {
        return compareTo(other) <= 0 ? this : other;
    }
}
