package slipway.mechanics.nerve;

/**
 * The state of the nerve in one posture, counted from the reference posture (all joints 0). Arrays have one value per
 * draw and belong to the caller.
 */
public interface PostureResponse {
    /** Strain at a site as a fraction (0.04 is 4 %), of the length in the reference posture. */
    double[] strainAt(Site site);

    /** Slide against the bed at a site in mm, distal positive. */
    double[] glideMmAt(Site site);

    /** Mean over the whole tract of the positive part of the strain, as a fraction. */
    double[] meanPositiveStrain(Tract tract);
}
