package slipway.care.facts;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slipway.care.record.chart.TryEntry;
import slipway.reasoning.billing.TimedService;

/**
 * A visit as it was recorded.
 *
 * @param number 1, 2, ... within the episode
 * @param by who treated
 * @param services timed services with their minutes
 * @param untimedMinutes minutes of everything else
 * @param notes what was written
 * @param tries exercises that were tried in the room
 */
public record Treatment(
        int number,
        LocalDate day,
        Optional<String> by,
        List<TimedService> services,
        OptionalInt untimedMinutes,
        Notes notes,
        List<TryEntry> tries) {
    public Treatment {
        services = List.copyOf(services);
        tries = List.copyOf(tries);
        if (number < 1) {
            throw new IllegalArgumentException("the number of a visit must be at least 1, was " + number);
        }
    }

    /**
     * What was written.
     *
     * @param told what the person said
     * @param done what was done beside the exercises
     * @param response how it went
     * @param next what comes next
     */
    public record Notes(
            Optional<String> told, Optional<String> done, Optional<String> response, Optional<String> next) {
        /** Nothing was written. */
        public static final Notes NONE =
                new Notes(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Minutes of the timed services. */
    public int timedMinutes() {
        return services.stream().mapToInt(TimedService::minutes).sum();
    }
}
