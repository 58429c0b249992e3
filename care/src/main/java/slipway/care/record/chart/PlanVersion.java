package slipway.care.record.chart;

import java.time.Instant;
import java.util.Optional;

/**
 * One version of the plan. What it says is never changed; only where it stands.
 *
 * @param number 1, 2, ... within the episode
 * @param releasedAt when it was given to the person
 */
public record PlanVersion(
        String episodeId,
        int number,
        PlanDraft plan,
        PlanState state,
        Instant madeAt,
        String madeBy,
        Instant stateAt,
        String stateBy,
        Optional<Instant> releasedAt) {}
