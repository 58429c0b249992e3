package slipway.study.policy;

/** How a report is answered beyond the dose, in rising order. */
public enum Answer {
    /** Nothing but the dose. */
    NONE,
    /** The person speaks with the clinic on the same day. */
    CONTACT,
    /** Emergency department, now. */
    EMERGENCY;

    /** The more urgent of the two. */
    public Answer orMore(Answer other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
