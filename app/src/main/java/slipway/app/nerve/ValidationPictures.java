package slipway.app.nerve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import slipway.mechanics.calibration.Prediction;
import slipway.mechanics.calibration.study.LeaveOneStudyOut;
import slipway.mechanics.calibration.study.LoadFacts;
import slipway.mechanics.calibration.study.ValidationStudy;
import slipway.mechanics.parameters.Prior;
import slipway.pictures.validity.AgreementPlot;
import slipway.pictures.validity.FactPlot;
import slipway.pictures.validity.FoldPlot;
import slipway.pictures.validity.FormPlot;
import slipway.pictures.validity.RatioPlot;

/** The plots of docs/validation.md. */
final class ValidationPictures {
    /** Shares of the mean strain in the load at which the two facts are computed. */
    static final List<Double> SPREADS = List.of(0.0, 0.25, 0.5, 0.75, 1.0);

    private ValidationPictures() {}

    /** SVG documents by file name. */
    static Map<String, String> of(ValidationStudy study) {
        var pictures = new LinkedHashMap<String, String>();
        pictures.put("agreement.svg", agreement(study.predictions()));
        pictures.put("left-out.svg", leftOut(study));
        if (study.forms().size() > 1) {
            pictures.put("forms.svg", forms(study));
        }
        pictures.put("load-facts.svg", facts(study));
        pictures.put("informed.svg", informed(study));
        return pictures;
    }

    /** Predicted against published, over all draws. */
    static String agreement(List<Prediction> predictions) {
        List<AgreementPlot.Row> rows = predictions.stream()
                .filter(p -> p.z().isPresent())
                .map(p -> new AgreementPlot.Row(
                        label(p), p.row().calibrates(), p.z().orElseThrow(), z(p, p.low()), z(p, p.high())))
                .toList();
        return AgreementPlot.svg("Nerve model against published measurements", rows);
    }

    private static String leftOut(ValidationStudy study) {
        var rows = new ArrayList<FoldPlot.Row>();
        for (Prediction p : study.chosen().predictions()) {
            double fitted = study.predictions().stream()
                    .filter(whole -> whole.row().id().equals(p.row().id()))
                    .findFirst()
                    .orElseThrow()
                    .z()
                    .orElseThrow();
            rows.add(new FoldPlot.Row(label(p), fitted, p.z().orElseThrow(), z(p, p.low()), z(p, p.high())));
        }
        return FoldPlot.svg("Every study predicted from the others", Aims.LARGEST_Z, rows);
    }

    private static String forms(ValidationStudy study) {
        var rows = new ArrayList<FormPlot.Row>();
        for (LeaveOneStudyOut form : study.forms()) {
            List<Double> absolute = form.predictions().stream()
                    .map(p -> Math.abs(p.z().orElseThrow()))
                    .toList();
            rows.add(new FormPlot.Row(form.form().name(), absolute, form.meanAbsoluteZ(), form.rootMeanSquareZ()));
        }
        return FormPlot.svg("Forms of the model, each study predicted from the others", Aims.MEAN_Z, rows);
    }

    private static String facts(ValidationStudy study) {
        var shift = new FactPlot.Panel(
                "Shift of the limit of a raised leg by dorsiflexion",
                -14,
                2,
                LoadFacts.fact("raise-shift-most"),
                LoadFacts.fact("raise-shift-least"),
                points(study.facts()::raiseShiftDeg));
        var sitting = new FactPlot.Panel(
                "Raise of the straight leg that loads like sitting",
                0,
                100,
                0,
                LoadFacts.fact("sitters-limit-high"),
                points(study.facts()::sittingAsRaiseDeg));
        return FactPlot.svg("Two facts of practice and the load measure", shift, sitting);
    }

    private static List<FactPlot.Point> points(DoubleFunction<double[]> fact) {
        return SPREADS.stream()
                .map(spread -> {
                    Interval interval = Interval.of(fact.apply(spread));
                    return new FactPlot.Point(spread, interval.median(), interval.low(), interval.high());
                })
                .toList();
    }

    private static String informed(ValidationStudy study) {
        List<RatioPlot.Row> rows = Prior.all().stream()
                .map(prior -> new RatioPlot.Row(
                        prior.parameter().key(), study.parameters().standardError(prior.parameter()) / prior.sd()))
                .toList();
        return RatioPlot.svg(
                "What the measurements say about each parameter",
                "standard error after the fit over that of the prior; hollow: hardly informed by the data",
                SensitivityReport.HARDLY_INFORMED,
                rows);
    }

    private static double z(Prediction p, double value) {
        return (value - p.row().published().mean().orElseThrow())
                / p.row().published().sd().orElseThrow();
    }

    private static String label(Prediction p) {
        return p.row().id() + " · " + p.row().quantity().key() + ", "
                + p.row().site().map(site -> site.name()).orElse("hip");
    }
}
