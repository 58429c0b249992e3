package slipway.care.record.chart;

import java.time.Instant;

/**
 * A supervised try as kept; it is never changed, a second try is a second record.
 *
 * @param planVersion the plan whose exercise was tried
 */
public record SupervisedTry(
        String id, String episodeId, String visitId, int planVersion, TryEntry entry, Instant at, String staffId) {}
