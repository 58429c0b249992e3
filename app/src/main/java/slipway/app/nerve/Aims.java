package slipway.app.nerve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slipway.mechanics.calibration.Prediction;
import slipway.mechanics.calibration.study.KeyOutput;
import slipway.mechanics.calibration.study.LeaveOneStudyOut;
import slipway.mechanics.calibration.study.LoadFacts;
import slipway.mechanics.calibration.study.OrderEffect;
import slipway.mechanics.calibration.study.SpreadRatio;
import slipway.mechanics.calibration.study.ValidationStudy;

/** What the nerve model should reach, set before the first fit, and where a study finds that it does not. */
final class Aims {
    /** Largest |z| of a row whose study was left out. */
    static final double LARGEST_Z = 1.5;

    /** Mean |z| of these rows. */
    static final double MEAN_Z = 0.7;

    /** |z| of a row within the spread between people. */
    static final double WITHIN_PEOPLE_Z = 1;

    /** Share of draws in which an order row holds. */
    static final double ORDER_SHARE = 0.9;

    /** Predicted over published spread between people. */
    static final double LEAST_SPREAD = 0.5;

    static final double MOST_SPREAD = 1.5;

    private final ValidationStudy study;

    Aims(ValidationStudy study) {
        this.study = study;
    }

    /** Every miss in one line, the worst kind first; empty if there is none. */
    List<String> misses() {
        var misses = new ArrayList<String>();
        addLeftOut(misses);
        addRows(misses);
        addSpread(misses);
        addFacts(misses);
        addUnsure(misses);
        return misses;
    }

    private void addLeftOut(List<String> misses) {
        LeaveOneStudyOut chosen = study.chosen();
        for (Prediction p : chosen.predictions()) {
            double z = p.z().orElseThrow();
            if (Math.abs(z) > LARGEST_Z) {
                misses.add(String.format(
                        Locale.ROOT,
                        "**%s** (%s) predicted without its study: %s against the published %s, z %s; its interval %s",
                        p.row().id(),
                        place(p),
                        MarkdownTable.number(p.median(), 2) + " "
                                + p.row().quantity().unit(),
                        MarkdownTable.number(p.row().published().mean().orElseThrow(), 2),
                        MarkdownTable.signed(z, 2),
                        LeaveOneStudyOut.covers(p) ? "holds the published mean" : "does not hold the published mean"));
            }
        }
        if (chosen.meanAbsoluteZ() > MEAN_Z) {
            misses.add(String.format(
                    Locale.ROOT, "mean |z| of left-out rows is %.2f, the aim is %.1f", chosen.meanAbsoluteZ(), MEAN_Z));
        }
    }

    private void addRows(List<String> misses) {
        for (Prediction p : study.predictions()) {
            if (p.z().isPresent() && Math.abs(p.z().getAsDouble()) > WITHIN_PEOPLE_Z) {
                misses.add(String.format(
                        Locale.ROOT,
                        "**%s** (%s) misses by more than the spread between people even when %s: z %s",
                        p.row().id(),
                        place(p),
                        p.row().calibrates() ? "fitted" : "not fitted",
                        MarkdownTable.signed(p.z().getAsDouble(), 2)));
            }
            if (p.holds().isPresent() && p.holds().getAsDouble() < ORDER_SHARE) {
                misses.add(String.format(
                        Locale.ROOT,
                        "**%s** holds in %.0f %% of draws only",
                        p.row().id(),
                        100 * p.holds().getAsDouble()));
            }
        }
    }

    private void addSpread(List<String> misses) {
        for (SpreadRatio ratio : study.spread()) {
            if (!inRange(ratio.people()) || !inRange(ratio.all())) {
                misses.add(String.format(
                        Locale.ROOT,
                        "**%s**: predicted over published spread is %.2f from people alone, %.2f over all draws (aim %.1f to %.1f)",
                        ratio.row().id(),
                        ratio.people(),
                        ratio.all(),
                        LEAST_SPREAD,
                        MOST_SPREAD));
            }
        }
    }

    static boolean inRange(double ratio) {
        return ratio >= LEAST_SPREAD && ratio <= MOST_SPREAD;
    }

    private void addFacts(List<String> misses) {
        double shift = Interval.of(study.facts().raiseShiftDeg(0)).median();
        double least = LoadFacts.fact("raise-shift-least");
        double most = LoadFacts.fact("raise-shift-most");
        if (!(shift <= least && shift >= most)) {
            misses.add("load as strain at the site alone: dorsiflexion shifts the limit of the raised leg by "
                    + MarkdownTable.number(shift, 1) + "°, in people by " + MarkdownTable.number(least, 1) + " to "
                    + MarkdownTable.number(most, 1) + "°");
        }
        double sitting = Interval.of(study.facts().sittingAsRaiseDeg(0)).median();
        if (sitting > LoadFacts.fact("sitters-limit-low")) {
            misses.add("load as strain at the site alone: sitting loads like a raise of "
                    + MarkdownTable.number(sitting, 0)
                    + "°, though most people whose raise is limited at "
                    + MarkdownTable.number(LoadFacts.fact("sitters-limit-low"), 0) + " to "
                    + MarkdownTable.number(LoadFacts.fact("sitters-limit-high"), 0) + "° can sit");
        }
    }

    private void addUnsure(List<String> misses) {
        study.outputs().forEach((output, draws) -> {
            Interval interval = Interval.of(draws);
            boolean isChange = output == KeyOutput.GLIDE || output == KeyOutput.STRAIN;
            if (isChange && interval.low() < 0 && interval.high() > 0) {
                misses.add(String.format(
                        Locale.ROOT,
                        "%s at the %s is %s %s: not even its direction is sure",
                        output.label(),
                        LoadFacts.SITE.name(),
                        interval.text(1),
                        output.unit()));
            }
        });
        for (OrderEffect effect : study.sensitivity().ofOrders()) {
            if (effect.holds() < ORDER_SHARE) {
                misses.add(String.format(
                        Locale.ROOT,
                        "**%s** would hold in %.0f %% of draws only, were the assumed angle of the %s %s° different",
                        effect.row().id(),
                        100 * effect.holds(),
                        effect.joint().key(),
                        MarkdownTable.signed(effect.byDeg(), 0)));
            }
        }
    }

    /** What a row measured and where. */
    static String place(Prediction p) {
        return p.row().quantity().key().replace('-', ' ')
                + p.row().site().map(site -> ", " + site.name()).orElse("");
    }
}
