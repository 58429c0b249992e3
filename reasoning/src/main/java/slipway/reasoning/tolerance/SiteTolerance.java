package slipway.reasoning.tolerance;

/**
 * The tolerance if the trouble is at this site, in percent of strain above the rest posture.
 *
 * @param site name of the site
 */
public record SiteTolerance(String site, double medianPct, double lowPct, double highPct) {
    public SiteTolerance {
        if (!(lowPct <= medianPct && medianPct <= highPct)) {
            throw new IllegalArgumentException(
                    "the tolerance at %s must be ordered, was %s, %s, %s".formatted(site, lowPct, medianPct, highPct));
        }
    }
}
