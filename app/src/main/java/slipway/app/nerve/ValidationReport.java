package slipway.app.nerve;

import static slipway.app.nerve.MarkdownTable.number;
import static slipway.app.nerve.MarkdownTable.signed;

import java.util.Locale;
import slipway.mechanics.calibration.EvidenceRow;
import slipway.mechanics.calibration.Prediction;
import slipway.mechanics.calibration.study.LeaveOneStudyOut;
import slipway.mechanics.calibration.study.LoadFacts;
import slipway.mechanics.calibration.study.SpreadRatio;
import slipway.mechanics.calibration.study.ValidationStudy;

/** The generated part of docs/validation.md: first where the model misses, then every table. */
final class ValidationReport {
    private final ValidationStudy study;
    private final StringBuilder out = new StringBuilder();

    private ValidationReport(ValidationStudy study) {
        this.study = study;
    }

    static String markdown(ValidationStudy study) {
        var report = new ValidationReport(study);
        report.head();
        report.misses();
        report.leftOut();
        report.rows();
        report.spread();
        report.forms();
        report.facts();
        return report.out + new SensitivityReport(study).markdown();
    }

    private void head() {
        out.append(String.format(
                Locale.ROOT,
                "Evidence `%s`, %d draws, seed fixed. An interval holds 90 %% of the draws.%n%n",
                study.parameters().evidenceSha256().substring(0, 12),
                study.outputs().values().iterator().next().length));
    }

    private void misses() {
        out.append("### Known misses\n\n");
        new Aims(study).misses().forEach(miss -> out.append("- ").append(miss).append('\n'));
        out.append('\n');
    }

    private void leftOut() {
        LeaveOneStudyOut chosen = study.chosen();
        out.append("### Every study predicted from the others\n\n![Left-out studies](images/left-out.svg)\n\n");
        out.append(new MarkdownTable("aim", "found", "met")
                .row(
                        "largest |z| at most " + Aims.LARGEST_Z,
                        number(chosen.largestAbsoluteZ(), 2),
                        met(chosen.largestAbsoluteZ() <= Aims.LARGEST_Z))
                .row(
                        "mean |z| at most " + Aims.MEAN_Z,
                        number(chosen.meanAbsoluteZ(), 2),
                        met(chosen.meanAbsoluteZ() <= Aims.MEAN_Z))
                .row(
                        "published means within their interval of 90 % (no aim was set)",
                        number(100 * chosen.covered(), 0) + " %", "")
                .text());
        var table = new MarkdownTable("row", "what", "published", "sd", "without its study", "z", "fitted: z");
        for (Prediction p : chosen.predictions()) {
            table.row(
                    p.row().id(),
                    Aims.place(p) + " (" + p.row().quantity().unit() + ")",
                    number(p.row().published().mean().orElseThrow(), 2),
                    number(p.row().published().sd().orElseThrow(), 2),
                    new Interval(p.median(), p.low(), p.high()).text(2),
                    signed(p.z().orElseThrow(), 2),
                    signed(fitted(p.row()), 2));
        }
        out.append(table.text());
    }

    private double fitted(EvidenceRow row) {
        return study.predictions().stream()
                .filter(p -> p.row().id().equals(row.id()))
                .findFirst()
                .orElseThrow()
                .z()
                .orElseThrow();
    }

    private void rows() {
        out.append("### Rows that were never fitted\n\n");
        var measured = new MarkdownTable("row", "what", "published", "sd", "predicted", "z");
        var orders = new MarkdownTable("order row", "relation", "share of draws", "aim " + Aims.ORDER_SHARE);
        for (Prediction p : study.predictions()) {
            if (p.holds().isPresent()) {
                double holds = p.holds().getAsDouble();
                orders.row(p.row().id(), p.row().relation(), number(holds, 2), met(holds >= Aims.ORDER_SHARE));
            } else if (p.z().isPresent() && !p.row().calibrates()) {
                measured.row(
                        p.row().id(),
                        Aims.place(p) + " (" + p.row().quantity().unit() + ")",
                        number(p.row().published().mean().orElseThrow(), 2),
                        number(p.row().published().sd().orElseThrow(), 2),
                        new Interval(p.median(), p.low(), p.high()).text(2),
                        signed(p.z().getAsDouble(), 2));
            }
        }
        out.append(measured.text()).append(orders.text());
        out.append("![All rows, fitted and not](images/agreement.svg)\n\n");
    }

    private void spread() {
        out.append("### Spread between people\n\nPredicted over published standard deviation, where one was published;"
                + " aim " + Aims.LEAST_SPREAD + " to " + Aims.MOST_SPREAD + ".\n\n");
        var table = new MarkdownTable("row", "published sd", "people alone", "all draws", "met");
        for (SpreadRatio ratio : study.spread()) {
            table.row(
                    ratio.row().id(),
                    number(ratio.row().published().sd().orElseThrow(), 2) + " "
                            + ratio.row().quantity().unit(),
                    number(ratio.people(), 2),
                    number(ratio.all(), 2),
                    met(Aims.inRange(ratio.people()) && Aims.inRange(ratio.all())));
        }
        out.append(table.text());
    }

    private void forms() {
        out.append("### Forms of the model\n\n");
        if (study.forms().size() == 1) {
            out.append("The forms were not compared in this quick run.\n\n");
            return;
        }
        out.append("![Forms compared](images/forms.svg)\n\n");
        var table = new MarkdownTable("form", "what is different", "mean |z|", "rms z", "largest |z|", "in interval");
        for (LeaveOneStudyOut form : study.forms()) {
            table.row(
                    form.form().name(),
                    form.form().description(),
                    number(form.meanAbsoluteZ(), 2),
                    number(form.rootMeanSquareZ(), 2),
                    number(form.largestAbsoluteZ(), 2),
                    number(100 * form.covered(), 0) + " %");
        }
        out.append(table.text());
    }

    private void facts() {
        out.append(
                "### The load measure and two facts of practice\n\n![Facts and the load](images/load-facts.svg)\n\n");
        var table = new MarkdownTable(
                "share of the mean strain in the load",
                "dorsiflexion shifts the limit by (deg)",
                "sitting loads like a raise of (deg)",
                "draws: sitting below a raise of 40°",
                "of 50°",
                "of 60°");
        for (double spread : ValidationPictures.SPREADS) {
            double[] sitting = study.facts().sittingAsRaiseDeg(spread);
            table.row(
                    number(spread, 2),
                    Interval.of(study.facts().raiseShiftDeg(spread)).text(1),
                    Interval.of(sitting).text(0),
                    below(sitting, 40),
                    below(sitting, 50),
                    below(sitting, 60));
        }
        out.append(table.text());
        out.append("Site: ").append(LoadFacts.SITE.name()).append(". In people: shift ");
        out.append(number(LoadFacts.fact("raise-shift-least"), 1)).append(" to ");
        out.append(number(LoadFacts.fact("raise-shift-most"), 1)).append("° (Boyd & Villa 2012: ");
        out.append(number(LoadFacts.fact("raise-shift"), 1)).append("°; Boyd et al 2009); most people whose raise is");
        out.append(" limited at 40 to 60° can sit (common practice).\n\n");
    }

    private static String below(double[] raise, double limitDeg) {
        double share = 0;
        for (double deg : raise) {
            share += deg < limitDeg ? 1.0 / raise.length : 0;
        }
        return number(100 * share, 0) + " %";
    }

    private static String met(boolean met) {
        return met ? "yes" : "**no**";
    }
}
