package slipway.reasoning.dose;

import java.util.List;
import slipway.reasoning.ReasoningData;

/**
 * Steps of a dose ({@code ladder.csv}). The range is no matter of these steps: it never goes beyond what was tried in
 * the room.
 */
public final class DoseLadder {
    private static final List<Integer> REPETITIONS = ReasoningData.table("ladder.csv").stream()
            .map(row -> Integer.valueOf(row.get("repetitions")))
            .toList();

    private DoseLadder() {}

    /** The steps of repetitions, rising. */
    public static List<Integer> repetitions() {
        return REPETITIONS;
    }

    /** The most that may be reached before the next visit unless the therapist says otherwise: one step of repetitions more. */
    public static Dose ceiling(Dose tried) {
        int more = REPETITIONS.stream()
                .filter(step -> step > tried.repetitions())
                .findFirst()
                .orElse(tried.repetitions());
        return new Dose(more, tried.sets(), tried.sessionsPerDay(), tried.secondsPerDirection());
    }

    /** For a day on which symptoms are up: one step of repetitions less, one set, once. */
    public static Dose easierDay(Dose usual) {
        int fewer = REPETITIONS.stream()
                .filter(step -> step < usual.repetitions())
                .reduce((first, second) -> second)
                .orElse(usual.repetitions());
        return new Dose(fewer, 1, 1, usual.secondsPerDirection());
    }
}
