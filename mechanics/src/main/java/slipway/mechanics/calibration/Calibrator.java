package slipway.mechanics.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slipway.mechanics.evidence.EvidenceHash;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.parameters.ParameterFile;

/** The whole calibration: fit of the average person, spread between people, and the file that carries both. */
public final class Calibrator {
    private Calibrator() {}

    /**
     * Outcome of a calibration.
     *
     * @param fit the fit of the average person
     * @param parameters the fit together with the spread between people
     * @param skipped rows that were not fitted, with the reason
     */
    public record Outcome(Fit fit, FittedParameters parameters, List<EvidenceTable.Skipped> skipped) {
        /** The parameter file. */
        public String file() {
            var notes = new ArrayList<String>();
            notes.add(String.format(
                    Locale.ROOT, "errors of the data were widened by %.3f (Birge ratio)", fit.widening()));
            for (Fit.Residual residual : fit.residuals()) {
                notes.add(String.format(
                        Locale.ROOT,
                        "residual %s: published %s, predicted %.3f, z %.2f",
                        residual.row().id(),
                        residual.row().published().mean().orElseThrow(),
                        residual.predicted(),
                        residual.z()));
            }
            return ParameterFile.write(parameters, notes);
        }
    }

    /** Fits the form that the program uses; the same as {@link #run(EvidenceTable, ModelForm)}. */
    public static Outcome run(EvidenceTable table) {
        return run(table, ModelForm.USED);
    }

    /** Fits a form to the calibrate rows of a table; every other row is listed as skipped. */
    public static Outcome run(EvidenceTable table, ModelForm form) {
        List<EvidenceRow> rows = table.calibrating();
        Fit fit = new Calibration(rows, form).fit();
        double[] personSd = new PersonSpread(fit)
                .personSd().stream().mapToDouble(Double::doubleValue).toArray();
        var skipped = new ArrayList<>(table.skipped());
        for (EvidenceRow row : table.rows()) {
            if (!row.calibrates()) {
                skipped.add(new EvidenceTable.Skipped(row.id(), row.use().isEmpty() ? "not for fitting" : row.use()));
            }
        }
        var parameters = new FittedParameters(fit.free(), fit.covariance(), personSd, EvidenceHash.sha256());
        return new Outcome(fit, parameters, List.copyOf(skipped));
    }
}
