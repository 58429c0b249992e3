package slipway.app.nerve;

import static slipway.app.nerve.MarkdownTable.number;
import static slipway.app.nerve.MarkdownTable.signed;

import java.util.Locale;
import java.util.Map;
import slipway.mechanics.calibration.study.AngleEffect;
import slipway.mechanics.calibration.study.KeyOutput;
import slipway.mechanics.calibration.study.MeshError;
import slipway.mechanics.calibration.study.OrderEffect;
import slipway.mechanics.calibration.study.ValidationStudy;
import slipway.mechanics.parameters.ModelParameter;
import slipway.mechanics.parameters.Prior;

/** The tables about what the answers hang on: assumed angles, priors, the data behind each parameter, the mesh. */
final class SensitivityReport {
    /** A parameter whose standard error is nearly that of its prior was hardly informed by the data. */
    static final double HARDLY_INFORMED = 0.9;

    private final ValidationStudy study;

    SensitivityReport(ValidationStudy study) {
        this.study = study;
    }

    String markdown() {
        return angles() + orders() + outputs() + priors() + parameters() + mesh();
    }

    private String angles() {
        var table = new MarkdownTable(
                "row", "assumed angle", "moved by", "prediction changes by", "in published sd", "glide", "strain");
        for (AngleEffect effect : study.sensitivity().ofAngles()) {
            table.row(
                    effect.row().id(),
                    effect.joint().key() + ", " + effect.end(),
                    signed(effect.byDeg(), 0) + "°",
                    signed(effect.change(), 2) + " " + effect.row().quantity().unit(),
                    signed(effect.changeInSd(), 2),
                    signed(effect.outputs().getOrDefault(KeyOutput.GLIDE, 0.0), 2) + " mm",
                    signed(effect.outputs().getOrDefault(KeyOutput.STRAIN, 0.0), 2) + " %");
        }
        return "### Sensitivity to assumed angles\n\nEach angle that a source does not state, moved by 10° in the"
                + " direction that changes more. \"held\": the same angle in both postures; \"start\" and \"finish\":"
                + " one end of a movement. Glide and strain: what a refit would then do to the raise to 60° at the deep"
                + " gluteal space, to first order; nothing for rows that are not fitted.\n\n"
                + table.text();
    }

    private String orders() {
        var table = new MarkdownTable("order row", "assumed angle", "moved by", "share of draws");
        for (OrderEffect effect : study.sensitivity().ofOrders()) {
            table.row(
                    effect.row().id(),
                    effect.joint().key(),
                    signed(effect.byDeg(), 0) + "°",
                    number(effect.holds(), 2));
        }
        return table.text();
    }

    private String outputs() {
        var table =
                new MarkdownTable("key output", "median", "90 % of draws", "priors that move it most, by one sd each");
        for (Map.Entry<KeyOutput, double[]> entry : study.outputs().entrySet()) {
            Interval interval = Interval.of(entry.getValue());
            table.row(
                    entry.getKey().label() + " (" + entry.getKey().unit() + ")",
                    number(interval.median(), 1),
                    number(interval.low(), 1) + " to " + number(interval.high(), 1),
                    strongest(entry.getKey()));
        }
        return "### Key outputs and the priors behind them\n\nAt the deep gluteal space, leg raised to 60°, knee straight,"
                + " ankle neutral. Each prior moved up by its own sd and the fit repeated to first order.\n\n"
                + table.text();
    }

    private String strongest(KeyOutput output) {
        var effects = study.sensitivity().ofPriors();
        return effects.entrySet().stream()
                .sorted((a, b) -> Double.compare(
                        Math.abs(b.getValue().getOrDefault(output, 0.0)),
                        Math.abs(a.getValue().getOrDefault(output, 0.0))))
                .limit(4)
                .map(e -> e.getKey().key() + " " + signed(e.getValue().getOrDefault(output, 0.0), 2))
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
    }

    private String priors() {
        var table = new MarkdownTable(
                "prior moved by one sd",
                "glide (mm)",
                "strain (%)",
                "mean strain (%)",
                "shift, strain (deg)",
                "shift, mean (deg)",
                "sitting, strain (deg)",
                "sitting, mean (deg)");
        for (ModelParameter parameter : ModelParameter.values()) {
            Map<KeyOutput, Double> effect = study.sensitivity().ofPriors().getOrDefault(parameter, Map.of());
            table.row(
                    parameter.key(),
                    cell(effect, KeyOutput.GLIDE, 2),
                    cell(effect, KeyOutput.STRAIN, 2),
                    cell(effect, KeyOutput.MEAN_STRAIN, 2),
                    cell(effect, KeyOutput.SHIFT_BY_STRAIN, 1),
                    cell(effect, KeyOutput.SHIFT_BY_MEAN_STRAIN, 1),
                    cell(effect, KeyOutput.SITTING_BY_STRAIN, 1),
                    cell(effect, KeyOutput.SITTING_BY_MEAN_STRAIN, 1));
        }
        return table.text();
    }

    private static String cell(Map<KeyOutput, Double> effect, KeyOutput output, int decimals) {
        return signed(effect.getOrDefault(output, 0.0), decimals);
    }

    private String parameters() {
        var table = new MarkdownTable("parameter", "unit", "prior", "mark", "fit", "posterior/prior", "informed");
        for (Prior prior : Prior.all()) {
            double ratio = study.parameters().standardError(prior.parameter()) / prior.sd();
            table.row(
                    prior.parameter().key(),
                    prior.unit(),
                    String.format(Locale.ROOT, "%.3g", prior.median()),
                    prior.mark(),
                    String.format(
                            Locale.ROOT, "%.3g", study.parameters().average().get(prior.parameter())),
                    number(ratio, 2),
                    ratio > HARDLY_INFORMED ? "hardly" : "yes");
        }
        long hardly = Prior.all().stream()
                .filter(prior -> study.parameters().standardError(prior.parameter()) / prior.sd() > HARDLY_INFORMED)
                .count();
        return "### What the measurements say about each parameter\n\n![Posterior over prior](images/informed.svg)\n\n"
                + hardly + " of " + Prior.all().size() + " parameters are hardly informed by the data (standard error"
                + " over that of the prior above " + HARDLY_INFORMED + "): their values are their priors.\n\n"
                + table.text();
    }

    private String mesh() {
        var table = new MarkdownTable("posture", "glide (mm)", "where", "strain (points of %)", "where");
        for (MeshError error : study.mesh()) {
            table.row(
                    error.posture().text(),
                    number(error.glideMm(), 3),
                    error.glideSite().name(),
                    number(error.strainPct(), 3),
                    error.strainSite().name());
        }
        return "### Error of the mesh\n\nLargest difference over all sites from a mesh with every cell divided into "
                + MeshError.REFINED + ", average person.\n\n" + table.text();
    }
}
