package slipway.reasoning.caseload;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.reasoning.measures.Change;

/**
 * What counts of one episode.
 *
 * @param group for example the therapist's id; never shown for small counts
 * @param days from the first visit to discharge, or to today
 * @param discharged whether care has ended
 * @param reportedDays share of the days since the first plan on which a report came, 0 to 1; empty before a plan was given
 * @param stalled empty if it can't be told
 * @param changes from the first to the latest score, by id of the measure
 */
public record EpisodeFacts(
        String group,
        int days,
        boolean discharged,
        OptionalDouble reportedDays,
        Optional<Boolean> stalled,
        Map<String, Change> changes) {
    public EpisodeFacts {
        changes = Map.copyOf(changes);
        if (days < 0) {
            throw new IllegalArgumentException("days of an episode must not be below 0, were " + days);
        }
        if (reportedDays.isPresent() && !(reportedDays.getAsDouble() >= 0 && reportedDays.getAsDouble() <= 1)) {
            throw new IllegalArgumentException(
                    "share of days with a report must be within 0 and 1, was " + reportedDays.getAsDouble());
        }
    }
}
