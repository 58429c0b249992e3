package slipway.reasoning.locate;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;

/**
 * A question to the locator.
 *
 * @param findings of the examination, in any order
 * @param sides sides on which the trouble can be; both if unknown or on both
 */
public record LocateRequest(List<Finding> findings, Set<Side> sides) {
    public LocateRequest {
        findings = List.copyOf(findings);
        if (sides.isEmpty()) {
            throw new IllegalArgumentException("locating needs at least one side on which the trouble can be");
        }
        sides = Set.copyOf(sides);
    }

    /** Findings of a person whose side is not known, or is both. */
    public static LocateRequest ofAnySide(List<Finding> findings) {
        return new LocateRequest(findings, EnumSet.allOf(Side.class));
    }
}
