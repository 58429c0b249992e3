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
 * @param adherence share of the planned sessions that were reported, 0 to 1; empty if nothing was reported
 * @param stalled empty if it can't be told
 * @param changes from the first to the latest score, by id of the measure
 */
public record EpisodeFacts(
        String group,
        int days,
        boolean discharged,
        OptionalDouble adherence,
        Optional<Boolean> stalled,
        Map<String, Change> changes) {
    public EpisodeFacts {
        changes = Map.copyOf(changes);
        if (days < 0) {
            throw new IllegalArgumentException("days of an episode must not be below 0, were " + days);
        }
        if (adherence.isPresent() && !(adherence.getAsDouble() >= 0 && adherence.getAsDouble() <= 1)) {
            throw new IllegalArgumentException("adherence must be within 0 and 1, was " + adherence.getAsDouble());
        }
    }
}
