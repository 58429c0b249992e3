package slipway.care.casefile;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Side;

/**
 * Measured ends of the joints in degrees, sign as in postures. What was not measured is absent.
 *
 * @param bySide per side and joint; a joint without sides stands under both
 */
public record RangesOfMotion(Map<Side, Map<Joint, Ends>> bySide) {
    public RangesOfMotion {
        var copy = new EnumMap<Side, Map<Joint, Ends>>(Side.class);
        bySide.forEach((side, ends) -> copy.put(side, Map.copyOf(ends)));
        bySide = Collections.unmodifiableMap(copy);
    }

    /** The two ends of one joint; an end that was not measured is empty. */
    public record Ends(OptionalDouble lowDeg, OptionalDouble highDeg) {
        /** Neither end measured. */
        public static final Ends UNKNOWN = new Ends(OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** What was measured of a joint; for a joint without sides the side does not matter. */
    public Ends of(Side side, Joint joint) {
        return bySide.getOrDefault(side, Map.of()).getOrDefault(joint, Ends.UNKNOWN);
    }
}
