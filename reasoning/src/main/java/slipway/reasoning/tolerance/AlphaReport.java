package slipway.reasoning.tolerance;

/**
 * How far the sensitivity is spread along the tract: 0 at the site alone, 1 all along.
 *
 * @param prior from the published effect of dorsiflexion
 * @param posterior with this person's tests
 */
public record AlphaReport(Interval prior, Interval posterior) {}
