package slipway.reasoning.measures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Reason;

/** Names a change by the published error and importance of its measure. */
final class ChangeRule {
    /** Rounding of decimal scores, points. */
    private static final double ROUNDING = 1e-9;

    private final Measure measure;
    private final double from;
    private final double gain;
    private final List<Reason> reasons = new ArrayList<>();

    private ChangeRule(Measure measure, double from, double to) {
        this.measure = measure;
        this.from = from;
        this.gain = measure.range().better().gain(from, to);
    }

    static Change of(Measure measure, double from, double to) {
        var rule = new ChangeRule(measure, from, to);
        return new Change(measure.id(), from, to, rule.gain, rule.kind(), rule.reasons);
    }

    private Change.Kind kind() {
        endOfScale();
        Optional<Coefficient> mdc = measure.thresholds().mdc();
        if (mdc.isPresent() && size() < mdc.get().value() - ROUNDING) {
            reason(mdc.get(), "A change of %s is less than %s, the least that is more than the error of the measure.");
            return Change.Kind.WITHIN_ERROR;
        }
        mdc.ifPresent(row -> reason(row, "A change of %s reaches %s, the least that is more than the error."));
        if (important()) {
            return Change.Kind.IMPORTANT;
        }
        if (mdc.isEmpty()) {
            reasons.add(Reason.practice(
                    "change.no-error-known", "No published error was found for %s.".formatted(measure.name())));
            return Change.Kind.NOT_KNOWN;
        }
        return Change.Kind.REAL;
    }

    private boolean important() {
        Optional<Coefficient> points = measure.thresholds().mcid();
        if (points.isPresent() && size() >= points.get().value() - ROUNDING) {
            reason(points.get(), "A change of %s reaches %s, the least that people call important.");
            return true;
        }
        Optional<Coefficient> share = measure.thresholds().mcidShare();
        if (share.isPresent() && from != 0 && size() >= share.get().value() * Math.abs(from) - ROUNDING) {
            reasons.add(Reason.by(
                    share.get(),
                    "change.important",
                    "A change of %s %% of the start reaches %s %%, the least that people call important."
                            .formatted(
                                    Numbers.text(100 * size() / Math.abs(from)),
                                    Numbers.text(100 * share.get().value()))));
            return true;
        }
        points.ifPresent(row -> reason(row, "A change of %s is less than %s, the least that people call important."));
        return false;
    }

    /** Near the end of a scale a change towards it cannot be told; said, whatever the change is. */
    private void endOfScale() {
        var better = measure.range().better();
        measure.thresholds()
                .noBetterFrom()
                .filter(row -> better.atLeastAsGood(from, row.value()))
                .ifPresent(row -> reason(row, "The start is so good that improvement can't be told (from %2$s on)."));
        measure.thresholds()
                .noWorseFrom()
                .filter(row -> better.atLeastAsGood(row.value(), from))
                .ifPresent(row -> reason(row, "The start is so bad that worsening can't be told (from %2$s on)."));
    }

    private double size() {
        return Math.abs(gain);
    }

    private void reason(Coefficient row, String sentence) {
        reasons.add(Reason.by(
                row, "change." + row.id(), sentence.formatted(Numbers.text(size()), Numbers.text(row.value()))));
    }
}
