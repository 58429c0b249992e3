package slipway.reasoning.tolerance;

import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import slipway.reasoning.basis.Reason;

/** Sentences about what a tolerance rests on. */
final class ToleranceWords {
    private ToleranceWords() {}

    /** What is known in one family; no fit means nothing. */
    static Reason family(TestFamily family, @Nullable FamilyFit fit) {
        if (fit == null) {
            return Reason.practice(
                    "tolerance.not-carried-over",
                    "Nothing tells the tolerance in %s; one measured elsewhere is not carried over."
                            .formatted(family.words()));
        }
        String bounds = fit.bounds().stream().map(LowerBound::id).collect(Collectors.joining("; "));
        if (fit.lowerBoundOnly()) {
            return Reason.finding(
                            "tolerance.lower-bound-only",
                            "In %s the tolerance is only known to be at least the load of: %s."
                                    .formatted(family.words(), bounds))
                    .with("bounds", fit.bounds().size(), "");
        }
        String onsets = fit.onsets().stream().map(TestLoad::id).collect(Collectors.joining("; "));
        String text = "In %s the tolerance is where symptoms began in: %s.%s"
                .formatted(
                        family.words(), onsets, bounds.isEmpty() ? "" : " It is at least the load of: " + bounds + ".");
        return Reason.finding("tolerance.measured", text)
                .with("onsets", fit.onsets().size(), "");
    }
}
