package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.reasoning.findings.Finding;

/**
 * A finding as the model sees it: the chance of a result between two cuts.
 *
 * @param finding what was found
 * @param lower factors of the chance to be above the lower cut; empty list for certainty
 * @param upper factors of the chance to be above the upper cut; empty if nothing is above it
 * @param temper share for which its evidence counts
 */
record Observation(Finding finding, List<Factor> lower, Optional<List<Factor>> upper, double temper) {
    Observation {
        lower = List.copyOf(lower);
        upper = upper.map(List::copyOf);
    }

    /** This result, and another thing found with it. */
    Observation and(Factor factor) {
        var low = new ArrayList<>(lower);
        low.add(factor);
        List<Factor> high = new ArrayList<>(upper.orElse(List.of()));
        high.add(factor);
        return new Observation(finding, low, upper.isPresent() ? Optional.of(high) : upper, temper);
    }

    /** A result better than the cut. */
    static Observation above(Finding finding, List<Factor> cut, double temper) {
        return new Observation(finding, cut, Optional.empty(), temper);
    }

    /** A result worse than the cut. */
    static Observation below(Finding finding, List<Factor> cut, double temper) {
        return new Observation(finding, List.of(), Optional.of(cut), temper);
    }
}
