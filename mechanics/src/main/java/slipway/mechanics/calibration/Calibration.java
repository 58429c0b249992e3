package slipway.mechanics.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.ParameterVector;
import slipway.mechanics.parameters.Prior;

/**
 * Fits the parameters to published rows by weighted non-linear least squares with priors: the most probable average
 * person, and its covariance from the curvature there.
 *
 * <p>The weight of a row is the standard error of its mean together with what the uncertainty of its site does to the
 * prediction. The Jacobian comes from one batched solve: every lane is the current vector with one parameter moved.
 */
public final class Calibration {
    /** Step of the central differences on the free scale; far above solver noise, far below any prior sd. */
    private static final double STEP = 1e-3;

    private static final int MAX_EVALUATIONS = 400;

    private final List<EvidenceRow> rows;
    private final ModelForm form;
    private final double[] priorMean;
    private final RealMatrix priorPrecision;
    private final RealMatrix priorRoot;

    /**
     * @param rows rows with a mean and an sd; order rows are not among them
     * @param form which parameters are fitted
     * @throws IllegalArgumentException if a row has no mean or no sd
     */
    public Calibration(List<EvidenceRow> rows, ModelForm form) {
        for (EvidenceRow row : rows) {
            if (row.published().mean().isEmpty()
                    || row.published().standardError().isEmpty()) {
                throw new IllegalArgumentException(row.id() + ": a row that is fitted needs a mean and an sd");
            }
        }
        this.rows = List.copyOf(rows);
        this.form = form;
        priorMean = form.mean();
        priorPrecision = MatrixUtils.inverse(form.covariance());
        // Root R with RᵀR = precision: the misfit of the priors is R (free − mean), of unit weight.
        priorRoot = new CholeskyDecomposition(priorPrecision, 1e-6, 1e-12).getLT();
    }

    /** Fits from the medians of the priors. */
    public Fit fit() {
        double[] sigma = sigmas(priorMean);
        double[] first = optimise(priorMean, sigma);
        // Once more with the sites' part of the weights taken at the fit instead of at the prior.
        double[] refined = sigmas(first);
        return finish(optimise(first, refined), refined);
    }

    private double[] optimise(double[] start, double[] sigma) {
        int data = rows.size();
        double[] target = new double[data + priorMean.length];
        double[] weight = new double[target.length];
        Arrays.fill(weight, 1);
        for (int i = 0; i < data; i++) {
            target[i] = rows.get(i).published().mean().orElseThrow();
            weight[i] = 1 / (sigma[i] * sigma[i]);
        }
        LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(start)
                        .target(target)
                        .weight(MatrixUtils.createRealDiagonalMatrix(weight))
                        .model(this::valueAndJacobian)
                        .maxEvaluations(MAX_EVALUATIONS)
                        .maxIterations(MAX_EVALUATIONS)
                        .build());
        return optimum.getPoint().toArray();
    }

    private Pair<RealVector, RealMatrix> valueAndJacobian(RealVector point) {
        double[] free = point.toArray();
        RealMatrix jacobian = new Array2DRowRealMatrix(rows.size() + free.length, free.length);
        double[] value = new double[rows.size() + free.length];
        Map<String, double[]> lanes = predict(neighbours(free));
        for (int i = 0; i < rows.size(); i++) {
            double[] row = values(lanes, rows.get(i));
            value[i] = row[0];
            for (int j = 0; j < free.length; j++) {
                jacobian.setEntry(i, j, (row[1 + 2 * j] - row[2 + 2 * j]) / (2 * STEP));
            }
        }
        double[] misfit = priorRoot
                .operate(point.subtract(new ArrayRealVector(priorMean, false)))
                .toArray();
        System.arraycopy(misfit, 0, value, rows.size(), misfit.length);
        jacobian.setSubMatrix(priorRoot.getData(), rows.size(), 0);
        return new Pair<>(new ArrayRealVector(value, false), jacobian);
    }

    private static List<ParameterVector> neighbours(double[] free) {
        var lanes = new ArrayList<ParameterVector>();
        lanes.add(Prior.toNatural(free));
        for (int j = 0; j < free.length; j++) {
            for (double sign : new double[] {1, -1}) {
                double[] moved = free.clone();
                moved[j] += sign * STEP;
                lanes.add(Prior.toNatural(moved));
            }
        }
        return lanes;
    }

    private Map<String, double[]> predict(List<ParameterVector> lanes) {
        return RowPredictor.predict(form.model(new DrawSet(lanes, 0)), rows);
    }

    static double[] values(Map<String, double[]> byId, EvidenceRow row) {
        double[] values = byId.get(row.id());
        if (values == null) {
            throw new IllegalStateException("no prediction for row " + row.id());
        }
        return values;
    }

    /** Standard error of each row: of the published mean, and of the prediction through the place of the site. */
    private double[] sigmas(double[] free) {
        double[] place = new SiteUncertainty(rows, form.bed()).sd(Prior.toNatural(free));
        double[] sigma = new double[rows.size()];
        for (int i = 0; i < sigma.length; i++) {
            sigma[i] = Math.hypot(rows.get(i).published().standardError().orElseThrow(), place[i]);
        }
        return sigma;
    }

    private Fit finish(double[] free, double[] sigma) {
        Pair<RealVector, RealMatrix> atFit = valueAndJacobian(new ArrayRealVector(free, false));
        double chiSquare = 0;
        var residuals = new ArrayList<Fit.Residual>();
        for (int i = 0; i < rows.size(); i++) {
            double predicted = atFit.getFirst().getEntry(i);
            double off = (predicted - rows.get(i).published().mean().orElseThrow()) / sigma[i];
            chiSquare += off * off;
            residuals.add(new Fit.Residual(rows.get(i), predicted, sigma[i]));
        }
        // Where the model misses by more than the errors of the data say, they are widened alike (Birge ratio).
        double widening = Math.max(1, chiSquare / rows.size());
        RealMatrix data = atFit.getSecond().getSubMatrix(0, rows.size() - 1, 0, free.length - 1);
        RealMatrix precision = priorPrecision;
        for (int i = 0; i < rows.size(); i++) {
            RealVector gradient = data.getRowVector(i);
            precision =
                    precision.add(gradient.outerProduct(gradient).scalarMultiply(1 / (sigma[i] * sigma[i] * widening)));
        }
        return new Fit(free, MatrixUtils.inverse(precision).getData(), data.getData(), residuals, Math.sqrt(widening));
    }
}
