package slipway.care.record.caseload;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/**
 * What counts of an episode in the figures of a caseload.
 *
 * @param place where it stands in the order
 * @param startedAt the first visit, or the opening if there was none
 * @param homeSince when a plan was first given to the person
 * @param reportDays days, by the clock in UTC, on which a report came from home
 * @param goalsReached whether there are goals and all of them were marked as reached
 * @param ends the first and the last score of each measure, in the order of their days
 * @param recent the same of the last weeks only; empty for a closed episode
 */
public record OutcomeRow(
        Place place,
        String therapistId,
        Instant startedAt,
        Optional<Instant> closedAt,
        Optional<Instant> homeSince,
        int reportDays,
        boolean goalsReached,
        List<Taken> ends,
        List<Taken> recent) {
    public OutcomeRow {
        ends = List.copyOf(ends);
        recent = List.copyOf(recent);
    }

    /** The newest first; of those opened in the same moment the one with the last id. */
    public record Place(Instant openedAt, String episodeId) {}

    public String episodeId() {
        return place.episodeId();
    }

    /** A score as it was entered. */
    public record Taken(String measureId, LocalDate day, ObjectNode body) {
        public Taken {
            body = body.deepCopy();
        }

        /** A copy. */
        @Override
        public ObjectNode body() {
            return body.deepCopy();
        }
    }

    /** Ids only: this may end in a log. */
    @Override
    public String toString() {
        return "outcome of episode " + episodeId();
    }
}
