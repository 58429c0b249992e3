package slipway.reasoning.response.propose;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import slipway.reasoning.dose.DoseLadder;
import slipway.reasoning.response.ladder.HomeDose;

/**
 * What to propose for home at a visit: the most daily repetitions within the limit of the estimate, up to one step beyond
 * what was given or reached; after a flare no more than that. What was eased between visits comes back here, where a
 * therapist looks at the person, and not only by the slow steps of the rules.
 */
public final class VisitDose {
    /** No more than double the daily repetitions from one visit to the next, as between visits. */
    private static final int MOST_RATIO = 2;

    private VisitDose() {}

    /**
     * The dose to propose, at the whole range.
     *
     * @param given at the visit before
     * @param now in force before this visit
     * @param flared whether a flare was reported since
     * @param mostSessions sessions a day that the therapist gives at most
     * @param withinLimit whether the estimate permits a dose; always true without an estimate
     */
    public static HomeDose next(
            HomeDose given, HomeDose now, boolean flared, int mostSessions, Predicate<HomeDose> withinLimit) {
        List<HomeDose> candidates = candidates(given, now, flared, mostSessions);
        return candidates.stream()
                .filter(withinLimit)
                .max(Comparator.comparingInt(HomeDose::dailyRepetitions)
                        .thenComparing(HomeDose::sessionsPerDay, Comparator.reverseOrder()))
                .orElseGet(() -> candidates.get(0));
    }

    /** All doses that {@link #next} looks at, the fewest repetitions of a session first. */
    public static List<HomeDose> candidates(HomeDose given, HomeDose now, boolean flared, int mostSessions) {
        return flared
                ? upTo(
                        now,
                        most(given.repetitions(), now.repetitions()),
                        most(given.sessionsPerDay(), now.sessionsPerDay()),
                        most(given.dailyRepetitions(), now.dailyRepetitions()))
                : further(given, now, mostSessions);
    }

    private static List<HomeDose> further(HomeDose given, HomeDose now, int mostSessions) {
        int repetitions = more(Math.max(given.repetitions(), now.repetitions()));
        int reached = Math.max(given.sessionsPerDay(), now.sessionsPerDay());
        int sessions = Math.max(now.sessionsPerDay(), Math.min(mostSessions, reached + 1));
        int daily = MOST_RATIO * Math.max(given.dailyRepetitions(), now.dailyRepetitions());
        return upTo(now, repetitions, sessions, daily);
    }

    /** All doses up to these bounds, the least first. */
    private static List<HomeDose> upTo(HomeDose now, int repetitions, int sessions, int daily) {
        IntStream steps = IntStream.concat(
                IntStream.of(now.repetitions()),
                DoseLadder.repetitions().stream().mapToInt(Integer::intValue));
        return steps.filter(step -> step <= repetitions)
                .distinct()
                .sorted()
                .boxed()
                .flatMap(step -> IntStream.rangeClosed(1, sessions)
                        .mapToObj(times -> new HomeDose(step, now.sets(), times, 1, now.secondsPerDirection())))
                .filter(dose -> dose.dailyRepetitions() <= daily)
                .toList();
    }

    private static int most(int one, int other) {
        return Math.max(one, other);
    }

    private static int more(int repetitions) {
        return DoseLadder.repetitions().stream()
                .filter(step -> step > repetitions)
                .findFirst()
                .orElse(repetitions);
    }
}
