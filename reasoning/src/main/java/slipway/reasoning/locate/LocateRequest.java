package slipway.reasoning.locate;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.screening.Region;

/**
 * A question to the locator.
 *
 * @param region the limb
 * @param findings of the examination, in any order
 * @param sides sides on which the trouble can be; both if unknown
 * @param prior chances of the sites before the findings
 */
public record LocateRequest(Region region, List<Finding> findings, Set<Side> sides, SitePrior prior) {
    public LocateRequest {
        findings = List.copyOf(findings);
        if (sides.isEmpty()) {
            throw new IllegalArgumentException("locating needs at least one side on which the trouble can be");
        }
        if (region == Region.ANY) {
            throw new IllegalArgumentException("locating needs a limb, leg or arm");
        }
        sides = Set.copyOf(sides);
    }

    /** A leg whose side is not known. */
    public static LocateRequest ofLeg(List<Finding> findings, SitePrior prior) {
        return new LocateRequest(Region.LEG, findings, EnumSet.allOf(Side.class), prior);
    }
}
