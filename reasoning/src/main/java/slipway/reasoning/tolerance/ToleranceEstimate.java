package slipway.reasoning.tolerance;

import java.util.Optional;

/**
 * A tolerance with the draws behind it.
 *
 * @param draws empty if no suspected site is modelled
 */
public record ToleranceEstimate(ToleranceReport report, Optional<LoadDraws> draws) {}
