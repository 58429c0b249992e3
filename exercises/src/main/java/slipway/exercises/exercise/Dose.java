package slipway.exercises.exercise;

import java.util.OptionalInt;

/**
 * How much, unless a plan says otherwise.
 *
 * @param repetitions in a set, 1 to 30
 * @param sets in a session, 1 to 5
 * @param sessionsPerDay 1 to 8
 * @param daysPerWeek 1 to 7
 * @param minutes length of a session for what is not counted, such as walking
 * @param basis source (author, year) or mark, for example {@code common practice}
 */
public record Dose(int repetitions, int sets, int sessionsPerDay, int daysPerWeek, OptionalInt minutes, String basis) {
    public Dose {
        require("repetitions", repetitions, 30);
        require("sets", sets, 5);
        require("sessions a day", sessionsPerDay, 8);
        require("days a week", daysPerWeek, 7);
        minutes.ifPresent(value -> require("minutes", value, 120));
        if (basis.isBlank()) {
            throw new IllegalArgumentException("a dose needs its source or mark");
        }
    }

    private static void require(String what, int value, int most) {
        if (value < 1 || value > most) {
            throw new IllegalArgumentException("%s must be within 1 and %d, was %d".formatted(what, most, value));
        }
    }
}
