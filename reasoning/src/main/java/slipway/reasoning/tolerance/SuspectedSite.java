package slipway.reasoning.tolerance;

import java.util.Optional;
import slipway.mechanics.nerve.Site;

/**
 * A place that is suspected, with its weight.
 *
 * @param name as the case says it
 * @param weight above 0; the weights of a list count in proportion
 * @param site empty for a place that the nerve model does not know, for example the hip joint
 */
public record SuspectedSite(String name, double weight, Optional<Site> site) {
    public SuspectedSite {
        if (!(weight > 0 && weight < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "the weight of the suspected site %s must be above 0, was %s".formatted(name, weight));
        }
    }

    /** A place by name: modelled if the model knows a site of this name. */
    public static SuspectedSite named(String name, double weight) {
        return new SuspectedSite(name, weight, Site.find(name));
    }
}
