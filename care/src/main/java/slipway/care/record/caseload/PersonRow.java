package slipway.care.record.caseload;

import java.util.Optional;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.person.Age;

/**
 * A person as a list needs it.
 *
 * @param afterKey what to pass to get the people behind this one
 * @param newestEpisodeId the newest episode, if there is one
 * @param newestState where it stands
 */
public record PersonRow(
        String personId,
        String name,
        Optional<Age> age,
        String afterKey,
        Optional<String> newestEpisodeId,
        Optional<EpisodeState> newestState) {
    /** Ids only: this may end in a log. */
    @Override
    public String toString() {
        return "row of person " + personId;
    }
}
