package slipway.reasoning.dose;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What limits a dose besides the tolerance.
 *
 * @param usualPain on an ordinary day, 0 to 10; empty if not asked
 * @param ranges measured ranges of motion
 * @param keptOut end positions that provoke
 * @param neckScreened whether the neck was screened before any movement that it leads
 */
public record DoseFindings(
        OptionalDouble usualPain, List<MeasuredRange> ranges, List<KeptOut> keptOut, boolean neckScreened) {
    private static final double WORST = 10;

    public DoseFindings {
        ranges = List.copyOf(ranges);
        keptOut = List.copyOf(keptOut);
        if (usualPain.isPresent() && !(usualPain.getAsDouble() >= 0 && usualPain.getAsDouble() <= WORST)) {
            throw new IllegalArgumentException("usual pain must be within 0 and 10, was " + usualPain.getAsDouble());
        }
    }

    /** Nothing limits. */
    public static DoseFindings none() {
        return new DoseFindings(OptionalDouble.empty(), List.of(), List.of(), false);
    }
}
