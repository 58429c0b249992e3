package slipway.mechanics.calibration;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import slipway.mechanics.parameters.Prior;

/**
 * How much people differ. The starting spread of each group of parameters is scaled so that the spread of the
 * predictions comes near the published spread between people; only rows whose sd was published count. The published
 * spread also holds the error of the measurement, so people are taken to differ a little more than they do.
 */
final class PersonSpread {
    /** How far a group's factor is believed to lie from 1, on the logarithm: assumption, a factor of about 2. */
    private static final double PRIOR_SD = 0.7;

    /** Weight of a row: a published sd of some ten people is itself known to about a quarter. */
    private static final double ROW_SD = 0.25;

    private static final int MAX_EVALUATIONS = 500;

    private final Fit fit;
    private final List<Prior> priors = Prior.all();
    private final List<String> groups =
            priors.stream().map(Prior::personGroup).distinct().toList();
    private final List<Integer> rows = new ArrayList<>();

    PersonSpread(Fit fit) {
        this.fit = fit;
        for (int i = 0; i < fit.residuals().size(); i++) {
            var published = fit.residuals().get(i).row().published();
            if (published.sd().isPresent() && !published.sdAssumed()) {
                rows.add(i);
            }
        }
    }

    /** Spread between people of each parameter on its free scale, by ordinal. */
    List<Double> personSd() {
        double[] logFactor = new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(new double[groups.size()])
                        .target(new double[rows.size() + groups.size()])
                        .weight(MatrixUtils.createRealDiagonalMatrix(weights()))
                        .model(this::misfit)
                        .maxEvaluations(MAX_EVALUATIONS)
                        .maxIterations(MAX_EVALUATIONS)
                        .build())
                .getPoint()
                .toArray();
        return priors.stream()
                .map(prior -> prior.personSd() * Math.exp(logFactor[groups.indexOf(prior.personGroup())]))
                .toList();
    }

    private double[] weights() {
        double[] weights = new double[rows.size() + groups.size()];
        for (int i = 0; i < weights.length; i++) {
            double sd = i < rows.size() ? ROW_SD : PRIOR_SD;
            weights[i] = 1 / (sd * sd);
        }
        return weights;
    }

    /** Logarithm of predicted over published sd of each row, then the logarithms of the factors themselves. */
    private Pair<RealVector, RealMatrix> misfit(RealVector logFactor) {
        RealVector value = new ArrayRealVector(rows.size() + groups.size());
        RealMatrix jacobian = new Array2DRowRealMatrix(rows.size() + groups.size(), groups.size());
        for (int i = 0; i < rows.size(); i++) {
            double[] variance = variances(rows.get(i), logFactor);
            double total = 0;
            for (double part : variance) {
                total += part;
            }
            double published =
                    fit.residuals().get(rows.get(i)).row().published().sd().orElseThrow();
            value.setEntry(i, 0.5 * Math.log(total / (published * published)));
            for (int g = 0; g < groups.size(); g++) {
                jacobian.setEntry(i, g, variance[g] / total);
            }
        }
        for (int g = 0; g < groups.size(); g++) {
            value.setEntry(rows.size() + g, logFactor.getEntry(g));
            jacobian.setEntry(rows.size() + g, g, 1);
        }
        return new Pair<>(value, jacobian);
    }

    /** What each group adds to the variance of a row. */
    private double[] variances(int row, RealVector logFactor) {
        double[] variance = new double[groups.size()];
        for (Prior prior : priors) {
            int group = groups.indexOf(prior.personGroup());
            double sd = prior.personSd() * Math.exp(logFactor.getEntry(group));
            double effect = fit.jacobian()[row][prior.parameter().ordinal()] * sd;
            variance[group] += effect * effect;
        }
        return variance;
    }
}
