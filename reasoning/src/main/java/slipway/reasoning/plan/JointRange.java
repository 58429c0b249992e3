package slipway.reasoning.plan;

/**
 * The range of a moving joint; both angles are the same for a joint that is held.
 *
 * @param joint as in postures, with the prefix {@code other-} for the limb of the other side
 */
public record JointRange(String joint, double fromDeg, double toDeg) {
    public JointRange {
        if (!Double.isFinite(fromDeg) || !Double.isFinite(toDeg)) {
            throw new IllegalArgumentException(
                    "the range of the %s must be finite, was %s to %s deg".formatted(joint, fromDeg, toDeg));
        }
    }
}
