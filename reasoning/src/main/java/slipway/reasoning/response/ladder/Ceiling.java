package slipway.reasoning.response.ladder;

import slipway.reasoning.dose.Dose;
import slipway.reasoning.dose.DoseLadder;

/**
 * The most that the therapist allows of an exercise before the next visit, in every component.
 *
 * @param rangeFraction share of the range that was tried in the room, at most 1
 */
public record Ceiling(int repetitions, int sessionsPerDay, double rangeFraction) {
    public Ceiling {
        if (repetitions < 1 || sessionsPerDay < 1) {
            throw new IllegalArgumentException("a ceiling needs 1 or more repetitions and sessions, was %d and %d"
                    .formatted(repetitions, sessionsPerDay));
        }
        if (!(rangeFraction > 0 && rangeFraction <= 1)) {
            throw new IllegalArgumentException(
                    "a ceiling must not go beyond the range that was tried (1), was " + rangeFraction);
        }
    }

    /** What holds if the therapist says nothing: the tried dose and one step of repetitions more. */
    public static Ceiling usual(Dose tried) {
        Dose most = DoseLadder.ceiling(tried);
        return new Ceiling(most.repetitions(), most.sessionsPerDay(), 1);
    }

    /** Whether a dose keeps to it in every component. */
    public boolean allows(HomeDose dose) {
        return dose.repetitions() <= repetitions
                && dose.sessionsPerDay() <= sessionsPerDay
                && dose.rangeFraction() <= rangeFraction;
    }
}
