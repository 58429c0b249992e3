package slipway.mechanics.calibration.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import slipway.mechanics.body.Person;
import slipway.mechanics.calibration.Calibrator;
import slipway.mechanics.calibration.EvidenceTable;
import slipway.mechanics.calibration.ModelForm;
import slipway.mechanics.calibration.Prediction;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;

/**
 * Everything that is known about how good the nerve model is, computed from the frozen evidence and the committed fit.
 *
 * @param parameters the fit that the program uses
 * @param predictions every row of the table, fitted or not, over the standard draws
 * @param forms leave-one-study-out of every form, the one that the program uses first
 * @param spread predicted beside published spread between people
 * @param sensitivity how the answers hang on what was assumed
 * @param outputs the key outputs, one value per draw
 * @param facts the two facts of practice, over the standard draws
 * @param mesh error of the mesh
 */
public record ValidationStudy(
        FittedParameters parameters,
        List<Prediction> predictions,
        List<LeaveOneStudyOut> forms,
        List<SpreadRatio> spread,
        Sensitivity sensitivity,
        Map<KeyOutput, double[]> outputs,
        LoadFacts facts,
        List<MeshError> mesh) {

    /**
     * Runs the study. Cost: one fit per study and form, a few seconds each.
     *
     * @param forms the forms to compare, the one that the program uses first
     */
    public static ValidationStudy run(EvidenceTable table, List<ModelForm> forms) {
        FittedParameters parameters = FittedParameters.bundled();
        var model = new PathwayModel(Person.STANDARD, parameters.standardDraws());
        var folds = new ArrayList<LeaveOneStudyOut>();
        for (ModelForm form : forms) {
            folds.add(LeaveOneStudyOut.run(table, form));
        }
        var refit = new LinearRefit(Calibrator.run(table).fit());
        return new ValidationStudy(
                parameters,
                Prediction.of(model, table.rows()),
                folds,
                SpreadRatio.of(parameters, table.rows()),
                new Sensitivity(
                        Sensitivity.ofPriors(refit),
                        AngleEffect.of(table.rows(), parameters.average(), refit),
                        OrderEffect.of(model, table.rows())),
                KeyOutput.of(model),
                new LoadFacts(model),
                MeshError.of(parameters.average()));
    }

    /** Leave-one-study-out of the form that the program uses. */
    public LeaveOneStudyOut chosen() {
        return forms.get(0);
    }
}
