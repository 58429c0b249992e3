package slipway.care.follow;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slipway.reasoning.dose.Dose;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;

/**
 * A dose for home at the whole range, with the most that is allowed before the next visit: what a therapist sets for an
 * exercise, in words that a decision keeps.
 *
 * @param mostRepetitions 1 to {@value #MOST_REPETITIONS}, at least {@code repetitions}
 * @param mostSessionsPerDay 1 to {@value #MOST_SESSIONS}, at least {@code sessionsPerDay}
 */
public record HomeSetting(int repetitions, int sets, int sessionsPerDay, int mostRepetitions, int mostSessionsPerDay) {
    /** Beyond this nobody means it; from memory of common practice. */
    public static final int MOST_REPETITIONS = 30;

    /** Sessions a day, likewise. */
    public static final int MOST_SESSIONS = 6;

    private static final Pattern WORDS =
            Pattern.compile("(\\d{1,3}) × (\\d{1,3}), (\\d{1,3}) a day; at most (\\d{1,3}), (\\d{1,3}) a day");

    public HomeSetting {
        within("sets", sets, 1, MOST_REPETITIONS);
        within("repetitions", repetitions, 1, MOST_REPETITIONS);
        within("sessions a day", sessionsPerDay, 1, MOST_SESSIONS);
        within("most repetitions", mostRepetitions, repetitions, MOST_REPETITIONS);
        within("most sessions a day", mostSessionsPerDay, sessionsPerDay, MOST_SESSIONS);
    }

    private static void within(String what, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(
                    "%s must be within %d and %d, was %d".formatted(what, least, most, value));
        }
    }

    /** A dose and a ceiling, each component brought within what nobody goes beyond. */
    public static HomeSetting of(HomeDose dose, Ceiling ceiling) {
        int repetitions = Math.min(dose.repetitions(), MOST_REPETITIONS);
        int sessions = Math.min(dose.sessionsPerDay(), MOST_SESSIONS);
        return new HomeSetting(
                repetitions,
                dose.sets(),
                sessions,
                Math.min(Math.max(repetitions, ceiling.repetitions()), MOST_REPETITIONS),
                Math.min(Math.max(sessions, ceiling.sessionsPerDay()), MOST_SESSIONS));
    }

    /** What {@link #words} wrote; empty if it is no such text. */
    public static Optional<HomeSetting> read(String words) {
        Matcher found = WORDS.matcher(words);
        try {
            return found.matches()
                    ? Optional.of(new HomeSetting(
                            number(found, 1), number(found, 2), number(found, 3), number(found, 4), number(found, 5)))
                    : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static int number(Matcher found, int group) {
        return Integer.parseInt(found.group(group));
    }

    /** For reading, and for {@link #read}. */
    public String words() {
        return "%d × %d, %d a day; at most %d, %d a day"
                .formatted(repetitions, sets, sessionsPerDay, mostRepetitions, mostSessionsPerDay);
    }

    /** The dose, at a pace. */
    public Dose dose(double secondsPerDirection) {
        return new Dose(repetitions, sets, sessionsPerDay, secondsPerDirection);
    }

    /** The most. */
    public Ceiling ceiling() {
        return new Ceiling(mostRepetitions, mostSessionsPerDay, 1);
    }
}
