package slipway.reasoning.plan;

/**
 * A suspected place.
 *
 * @param site name as the case says it
 * @param probability 0 to 1, all places of a case together 1
 * @param modelled whether the nerve model knows it
 */
public record SiteShare(String site, double probability, boolean modelled) {
    public SiteShare {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException(
                    "the probability of %s must be within 0 and 1, was %s".formatted(site, probability));
        }
    }
}
