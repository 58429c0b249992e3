package slipway.reasoning.dose;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What limits a dose besides the tolerance.
 *
 * @param usualPain on an ordinary day, 0 to 10; empty if not asked
 * @param ranges measured ranges of motion
 * @param keptOut end positions that provoke
 * @param neckScreened whether the neck was screened before any movement that it leads
 * @param limits what the screening takes away
 */
public record DoseFindings(
        OptionalDouble usualPain,
        List<MeasuredRange> ranges,
        List<KeptOut> keptOut,
        boolean neckScreened,
        Set<DoseLimit> limits) {
    private static final double WORST = 10;

    public DoseFindings {
        ranges = List.copyOf(ranges);
        keptOut = List.copyOf(keptOut);
        limits = Set.copyOf(limits);
        if (usualPain.isPresent() && !(usualPain.getAsDouble() >= 0 && usualPain.getAsDouble() <= WORST)) {
            throw new IllegalArgumentException("usual pain must be within 0 and 10, was " + usualPain.getAsDouble());
        }
    }

    /** The same with more limits. */
    public DoseFindings with(Set<DoseLimit> more) {
        var all = new HashSet<>(limits);
        all.addAll(more);
        return new DoseFindings(usualPain, ranges, keptOut, neckScreened, all);
    }

    /** Nothing limits. */
    public static DoseFindings none() {
        return new DoseFindings(OptionalDouble.empty(), List.of(), List.of(), false, Set.of());
    }
}
