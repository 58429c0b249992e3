package slipway.reasoning.screening;

import java.util.Locale;

/** How urgent the result of a screening is, most urgent first. */
public enum Level {
    EMERGENCY,
    URGENT,
    /** An emergency or urgent question is not answered yes or no. */
    INCOMPLETE,
    CAUTION,
    CLEAR;

    /** Whether a plan is held back until a clinician has recorded a clearance or the missing answers. */
    public boolean blocksPlan() {
        return compareTo(INCOMPLETE) <= 0;
    }

    /** The more urgent of the two. */
    public Level or(Level other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** The name in files, for example {@code emergency}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
