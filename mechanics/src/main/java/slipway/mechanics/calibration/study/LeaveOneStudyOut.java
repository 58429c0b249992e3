package slipway.mechanics.calibration.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import slipway.mechanics.calibration.Calibrator;
import slipway.mechanics.calibration.EvidenceRow;
import slipway.mechanics.calibration.EvidenceTable;
import slipway.mechanics.calibration.ModelForm;
import slipway.mechanics.calibration.Prediction;

/**
 * What a form of the model says about each study when it was fitted to the others only. Nothing of the left-out study
 * enters: not its means, not its spread between people.
 *
 * @param form the form
 * @param predictions every calibrate row, predicted without its own study, in the order of the table
 */
public record LeaveOneStudyOut(ModelForm form, List<Prediction> predictions) {
    public LeaveOneStudyOut {
        predictions = List.copyOf(predictions);
        if (predictions.isEmpty()) {
            throw new IllegalArgumentException("at least one row must be left out and predicted");
        }
    }

    /** Leaves out every study with calibrate rows, one after the other. Cost: one fit per study. */
    public static LeaveOneStudyOut run(EvidenceTable table, ModelForm form) {
        return run(table, form, studies(table));
    }

    /** Leaves out only these studies, one after the other. */
    public static LeaveOneStudyOut run(EvidenceTable table, ModelForm form, List<String> studies) {
        var predictions = new ArrayList<Prediction>();
        for (String study : studies) {
            predictions.addAll(fold(table.calibrating(), form, study));
        }
        return new LeaveOneStudyOut(form, predictions);
    }

    /** The studies with calibrate rows, in the order of the table. */
    public static List<String> studies(EvidenceTable table) {
        return table.calibrating().stream().map(EvidenceRow::study).distinct().toList();
    }

    private static List<Prediction> fold(List<EvidenceRow> rows, ModelForm form, String study) {
        List<EvidenceRow> others =
                rows.stream().filter(row -> !row.study().equals(study)).toList();
        List<EvidenceRow> own =
                rows.stream().filter(row -> row.study().equals(study)).toList();
        var parameters =
                Calibrator.run(new EvidenceTable(others, List.of()), form).parameters();
        return Prediction.of(form.model(parameters.standardDraws()), own);
    }

    /** Mean of |z| over the rows. */
    public double meanAbsoluteZ() {
        return absolute().average().orElseThrow();
    }

    /** Largest |z|. */
    public double largestAbsoluteZ() {
        return absolute().max().orElseThrow();
    }

    /** Root of the mean of z². */
    public double rootMeanSquareZ() {
        return Math.sqrt(absolute().map(z -> z * z).average().orElseThrow());
    }

    /** Share of the rows whose published mean lies within the predicted interval that holds 90 % of the draws. */
    public double covered() {
        return (double) predictions.stream().filter(LeaveOneStudyOut::covers).count() / predictions.size();
    }

    /** Whether the published mean lies within the predicted interval. */
    public static boolean covers(Prediction prediction) {
        double mean = prediction.row().published().mean().orElseThrow();
        return prediction.low() <= mean && mean <= prediction.high();
    }

    private DoubleStream absolute() {
        return predictions.stream().mapToDouble(p -> Math.abs(p.z().orElseThrow()));
    }
}
