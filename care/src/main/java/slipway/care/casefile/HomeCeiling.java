package slipway.care.casefile;

import java.util.OptionalInt;

/**
 * The most that the therapist allows of an exercise at home before the next visit. What is empty stays as usual; the range
 * never goes beyond what was tried.
 */
public record HomeCeiling(OptionalInt repetitions, OptionalInt sessionsPerDay) {
    public HomeCeiling {
        if (repetitions.orElse(1) < 1 || sessionsPerDay.orElse(1) < 1) {
            throw new IllegalArgumentException(
                    "a ceiling needs 1 or more, was %s and %s".formatted(repetitions, sessionsPerDay));
        }
    }
}
