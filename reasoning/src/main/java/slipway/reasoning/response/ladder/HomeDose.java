package slipway.reasoning.response.ladder;

import slipway.reasoning.dose.Dose;

/**
 * What a person does at home of one exercise.
 *
 * @param repetitions in a go
 * @param sets goes in a session
 * @param sessionsPerDay how often a day
 * @param rangeFraction share of the range that was given, above 0 to 1
 * @param secondsPerDirection time for one way of the movement, s
 */
public record HomeDose(
        int repetitions, int sets, int sessionsPerDay, double rangeFraction, double secondsPerDirection) {
    public HomeDose {
        if (repetitions < 1 || sets < 1 || sessionsPerDay < 1 || !(secondsPerDirection > 0)) {
            throw new IllegalArgumentException(
                    "a dose needs 1 or more of each and time above 0 s, was %d x %d x %d at %s s"
                            .formatted(repetitions, sets, sessionsPerDay, secondsPerDirection));
        }
        if (!(rangeFraction > 0 && rangeFraction <= 1)) {
            throw new IllegalArgumentException(
                    "the range must be above 0 and at most the given one (1), was " + rangeFraction);
        }
    }

    /** A dose of a plan with its whole range. */
    public static HomeDose of(Dose given) {
        return new HomeDose(given.repetitions(), given.sets(), given.sessionsPerDay(), 1, given.secondsPerDirection());
    }

    /** For reading: repetitions, sets, sessions a day and share of the range. */
    public String words() {
        return "%d × %d, %d a day, %.0f %% of the range"
                .formatted(repetitions, sets, sessionsPerDay, 100 * rangeFraction);
    }

    /** Repetitions in a day. */
    public int dailyRepetitions() {
        return repetitions * sets * sessionsPerDay;
    }

    /** Whether no component is more than the other's; time for one way is no matter of more or less. */
    public boolean notAbove(HomeDose other) {
        return repetitions <= other.repetitions
                && sets <= other.sets
                && sessionsPerDay <= other.sessionsPerDay
                && rangeFraction <= other.rangeFraction;
    }

    /** The same, slower by this factor. */
    public HomeDose slowerBy(double factor) {
        return new HomeDose(repetitions, sets, sessionsPerDay, rangeFraction, secondsPerDirection * factor);
    }
}
