package slipway.study.policy;

/**
 * What is asked of a day.
 *
 * @param rung place on the ladder of ranges, from 0
 * @param repetitions in a session
 * @param sessions in the day; 0 for rest
 */
public record Asked(int rung, int repetitions, int sessions) {
    public Asked {
        if (rung < 0 || repetitions < 1 || sessions < 0) {
            throw new IllegalArgumentException(
                    "a dose needs a rung from 0, repetitions from 1 and sessions from 0, was " + rung + ", "
                            + repetitions + ", " + sessions);
        }
    }

    /** The same dose, not today. */
    public Asked rest() {
        return new Asked(rung, repetitions, 0);
    }

    /** The same dose with another range. */
    public Asked at(int otherRung) {
        return new Asked(otherRung, repetitions, sessions);
    }
}
