package slipway.web.bench;

import java.util.Optional;
import slipway.web.bench.BenchAnswer.Drawn;

/**
 * The load ruler of a person on the bench.
 *
 * @param episodeId where the person's plan is
 * @param place the place that it is told for; blank if none is known
 * @param rest the posture that its loads are counted from, in words; blank without a case
 * @param picture empty when there is no plan to take it from
 */
public record BenchRuler(String episodeId, String place, String rest, Optional<Drawn> picture) {}
