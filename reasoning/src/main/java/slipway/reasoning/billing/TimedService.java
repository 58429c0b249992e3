package slipway.reasoning.billing;

import slipway.reasoning.basis.Coefficients;

/**
 * A timed service of one day.
 *
 * @param name what the therapist calls it, for example {@code A}; never a licensed code description
 * @param minutes direct one-on-one minutes, 0 to 480
 */
public record TimedService(String name, int minutes) {
    /** The longest time that is believed. */
    public static final int MAX_MINUTES =
            (int) Coefficients.load("time-units.csv").value("longest-minutes");

    public TimedService {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a timed service needs a name");
        }
        if (minutes < 0 || minutes > MAX_MINUTES) {
            throw new IllegalArgumentException(
                    "minutes of %s must be within 0 and %d, were %d".formatted(name, MAX_MINUTES, minutes));
        }
    }
}
