package slipway.reasoning.dose;

import slipway.reasoning.tolerance.Interval;

/**
 * What a movement does to the nerve.
 *
 * @param glideMm how far the nerve travels past the site in one direction of the movement
 * @param netGlideMm where the nerve is at the site at the end of the movement against its start; distal positive
 * @param peakLoadPct the largest load anywhere along the movement, in percent above the rest posture
 * @param limitPct the median of the limit that the peak is held against
 * @param probabilityAboveLimit chance that the peak is above the limit
 * @param glideToLoad mm of glide per percent of rise over the start posture
 * @param movementShown whether the glide is large enough to speak of
 */
public record Effect(
        Interval glideMm,
        Interval netGlideMm,
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

    /** Whether the model shows a movement at the site but not which way it goes: its interval has zero inside. */
    public boolean directionUnsure() {
        return movementShown && netGlideMm.low() < 0 && netGlideMm.high() > 0;
    }
}
