package slipway.care.record.caseload;

import java.time.Instant;
import java.util.Optional;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.chart.PlanState;
import slipway.mechanics.body.Side;
import tools.jackson.databind.node.ObjectNode;

/**
 * An open episode as a list needs it.
 *
 * @param newestPlan the newest version of the plan
 * @param lastVisitAt start of the newest visit
 * @param lastCheckIn what was received last
 * @param toldAt when the person was done telling by phone before the first visit
 * @param openAlerts how many safety alerts wait
 * @param firstAlertAt since when the oldest of them waits
 */
public record TodayRow(
        String episodeId,
        String personId,
        String name,
        Side side,
        String therapistId,
        EpisodeState state,
        Instant openedAt,
        Optional<NewestPlan> newestPlan,
        Optional<Instant> lastVisitAt,
        Optional<LastCheckIn> lastCheckIn,
        Optional<Instant> toldAt,
        int openAlerts,
        Optional<Instant> firstAlertAt) {
    /** The newest version of the plan. */
    public record NewestPlan(int number, PlanState state, Instant stateAt) {}

    /** What was received last. */
    public record LastCheckIn(Instant receivedAt, String exerciseId, ObjectNode body) {
        public LastCheckIn {
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
        return "row of episode " + episodeId;
    }
}
