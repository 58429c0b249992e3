package slipway.reasoning.dose;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;

/** What a screening rule changes in a dose ({@code dose} in the screening rules). Those of no group here only caution. */
public enum DoseLimit {
    /** The dose of the next higher irritability. */
    START_LOWER("startLower"),
    LYING_ONLY("lyingOnly"),
    NO_SLUMP("noSlump"),
    NO_PRONE("noProne"),
    /** Movements stay away from the ends of the measured ranges. */
    NO_END_RANGE("noEndRange"),
    /** The affected leg is left alone until the physician has decided. */
    NO_LEG_LOADING("noLegLoading"),
    NO_LONG_SUPINE("noLongSupine"),
    NO_LOCAL_PRESSURE("noLocalPressure"),
    SURGEON_LIMITS("surgeonLimits"),
    HAND_SUPPORT("handSupport"),
    SKIN_CHECK("skinCheck"),
    CHECK_PULSES("checkPulses"),
    RECHECK_EACH_VISIT("recheckEachVisit"),
    RETEST_STRENGTH_EACH_VISIT("retestStrengthEachVisit");

    private final String key;

    DoseLimit(String key) {
        this.key = key;
    }

    /** The name in the screening rules. */
    public String key() {
        return key;
    }

    /**
     * The limits of these names.
     *
     * @throws IllegalArgumentException naming every unknown one: a limit that is not understood must not be lost
     */
    public static Set<DoseLimit> read(Collection<String> names) {
        var limits = EnumSet.noneOf(DoseLimit.class);
        var unknown = new TreeSet<>(names);
        for (DoseLimit limit : values()) {
            if (unknown.remove(limit.key)) {
                limits.add(limit);
            }
        }
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException("unknown dose limits %s (known: %s)"
                    .formatted(
                            String.join(", ", unknown),
                            String.join(
                                    ", ",
                                    Arrays.stream(values()).map(DoseLimit::key).toList())));
        }
        return limits;
    }
}
