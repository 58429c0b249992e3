package slipway.care.record.chart;

import java.util.EnumSet;
import java.util.Set;

/** Where a version of the plan stands. */
public enum PlanState {
    PROPOSED,
    /** The therapist has taken it. */
    ACCEPTED,
    /** The person has it at home. */
    RELEASED,
    REFUSED,
    /** A later version has been released. */
    REPLACED;

    /** Where it can go from here. */
    public Set<PlanState> next() {
        return switch (this) {
            case PROPOSED -> EnumSet.of(ACCEPTED, REFUSED, REPLACED);
            case ACCEPTED -> EnumSet.of(RELEASED, REFUSED, REPLACED);
            case RELEASED -> EnumSet.of(REPLACED);
            case REFUSED, REPLACED -> EnumSet.noneOf(PlanState.class);
        };
    }
}
