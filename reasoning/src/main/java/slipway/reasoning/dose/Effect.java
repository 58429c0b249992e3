package slipway.reasoning.dose;

import slipway.reasoning.tolerance.Interval;

/**
 * What a movement does to the nerve.
 *
 * @param glideMm how far the nerve travels past the site in one direction of the movement
 * @param peakLoadPct the largest load anywhere along the movement, in percent above the rest posture
 * @param limitPct the median of the limit that the peak is held against
 * @param probabilityAboveLimit chance that the peak is above the limit
 * @param glideToLoad mm of glide per percent of rise over the start posture
 * @param movementShown whether the glide is large enough to speak of
 */
public record Effect(
        Interval glideMm,
        Interval peakLoadPct,
        double limitPct,
        double probabilityAboveLimit,
        double glideToLoad,
        boolean movementShown) {
    public Effect {
        if (!(probabilityAboveLimit >= 0 && probabilityAboveLimit <= 1)) {
            throw new IllegalArgumentException("a probability must be within 0 and 1, was " + probabilityAboveLimit);
        }
        if (!(glideToLoad >= 0 && glideToLoad < Double.POSITIVE_INFINITY) || !Double.isFinite(limitPct)) {
            throw new IllegalArgumentException(
                    "glide to load and limit must be finite, were %s and %s".formatted(glideToLoad, limitPct));
        }
    }
}
