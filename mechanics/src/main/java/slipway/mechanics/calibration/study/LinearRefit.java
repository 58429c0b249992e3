package slipway.mechanics.calibration.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import slipway.mechanics.body.Person;
import slipway.mechanics.calibration.EvidenceRow;
import slipway.mechanics.calibration.Fit;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.ModelParameter;
import slipway.mechanics.parameters.ParameterVector;
import slipway.mechanics.parameters.Prior;
import slipway.mechanics.pathway.PathwayModel;

/**
 * How the key outputs of the average person would move if the fit were repeated with another prior or another
 * prediction of a row, to first order: the fit answers to a change δ of its gradient with {@code C δ}, C the inverse
 * curvature with the weights of the fit itself (not widened by the Birge ratio).
 */
final class LinearRefit {
    /** Step of the central differences on the free scale; wide enough to even out the kinks of interpolated angles. */
    private static final double STEP = 0.05;

    private final Fit fit;
    private final RealMatrix inverseCurvature;
    private final Map<KeyOutput, RealVector> gradient;

    LinearRefit(Fit fit) {
        this.fit = fit;
        inverseCurvature = MatrixUtils.inverse(curvature(fit));
        gradient = gradients(fit.free());
    }

    private static RealMatrix curvature(Fit fit) {
        RealMatrix curvature = new Array2DRowRealMatrix(fit.free().length, fit.free().length);
        for (Prior prior : Prior.all()) {
            int at = prior.parameter().ordinal();
            curvature.setEntry(at, at, 1 / (prior.sd() * prior.sd()));
        }
        for (int i = 0; i < fit.residuals().size(); i++) {
            double sigma = fit.residuals().get(i).sigma();
            RealVector row = new ArrayRealVector(fit.jacobian()[i], false);
            curvature = curvature.add(row.outerProduct(row).scalarMultiply(1 / (sigma * sigma)));
        }
        return curvature;
    }

    private static Map<KeyOutput, RealVector> gradients(double[] free) {
        var lanes = new ArrayList<ParameterVector>();
        for (int j = 0; j < free.length; j++) {
            for (double sign : new double[] {1, -1}) {
                double[] moved = free.clone();
                moved[j] += sign * STEP;
                lanes.add(Prior.toNatural(moved));
            }
        }
        var gradients = new EnumMap<KeyOutput, RealVector>(KeyOutput.class);
        KeyOutput.of(new PathwayModel(Person.STANDARD, new DrawSet(lanes, 0))).forEach((output, values) -> {
            RealVector gradient = new ArrayRealVector(free.length);
            for (int j = 0; j < free.length; j++) {
                gradient.setEntry(j, (values[2 * j] - values[2 * j + 1]) / (2 * STEP));
            }
            gradients.put(output, gradient);
        });
        return gradients;
    }

    /** Change of the key outputs when the median of a prior lies one prior sd higher on its free scale. */
    Map<KeyOutput, Double> ofPrior(ModelParameter parameter) {
        RealVector pull = new ArrayRealVector(fit.free().length);
        pull.setEntry(parameter.ordinal(), 1 / Prior.of(parameter).sd());
        return ofPull(pull);
    }

    /** Change of the key outputs when the prediction of a row lies higher by so much; none if it was not fitted. */
    Map<KeyOutput, Double> ofRow(EvidenceRow row, double change) {
        List<Fit.Residual> residuals = fit.residuals();
        RealVector pull = new ArrayRealVector(fit.free().length);
        for (int i = 0; i < residuals.size(); i++) {
            if (residuals.get(i).row().id().equals(row.id())) {
                double sigma = residuals.get(i).sigma();
                pull = new ArrayRealVector(fit.jacobian()[i]).mapMultiply(-change / (sigma * sigma));
            }
        }
        return ofPull(pull);
    }

    private Map<KeyOutput, Double> ofPull(RealVector pull) {
        RealVector shift = inverseCurvature.operate(pull);
        var changes = new EnumMap<KeyOutput, Double>(KeyOutput.class);
        gradient.forEach((output, g) -> changes.put(output, g.dotProduct(shift)));
        return changes;
    }
}
