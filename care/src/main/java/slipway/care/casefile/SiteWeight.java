package slipway.care.casefile;

import java.util.Optional;
import slipway.mechanics.nerve.Site;

/**
 * A suspected place.
 *
 * @param name as in the file
 * @param site empty for a place that the nerve model does not know
 * @param probability weight above 0; those of a case sum to 1
 */
public record SiteWeight(String name, Optional<Site> site, double probability, String reason) {}
