package slipway.reasoning.response.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.filtering.kalman.Measurement;
import org.hipparchus.filtering.kalman.ProcessEstimate;
import org.hipparchus.filtering.kalman.linear.LinearEvolution;
import org.hipparchus.filtering.kalman.linear.LinearKalmanFilter;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposer;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * With onsets of known error alone and without set-backs the model is linear and Gaussian: the Kalman filter of Hipparchus
 * 4.0.2 gives the exact mean and spread of tolerance and gain.
 */
class KalmanReferenceTest {
    private static final int PARTICLES = 1 << 16;
    private static final double DRIFT_SD = 0.0005;
    private static final double DAY_SD = 0.02;
    private static final double ERROR_SD = 0.1;
    private static final double[] DAYS = {0, 1, 1, 3, 0.5, 7, 2, 1, 1, 14, 1, 2};
    private static final double[] ONSETS = {0.1, 0.05, -0.1, 0.12, 0.2, 0.0, 0.25, 0.1, 0.3, 0.2, 0.4, 0.35};
    private static final Prior PRIOR = new Prior(0, 0.3, 0, 0.6, 0.004, 0.006);

    private record Onset(double time, double days, RealVector value) implements Measurement {
        @Override
        public double getTime() {
            return time;
        }

        @Override
        public RealVector getValue() {
            return value;
        }

        @Override
        public RealMatrix getCovariance() {
            return MatrixUtils.createRealDiagonalMatrix(new double[] {ERROR_SD * ERROR_SD});
        }
    }

    @Test
    void followsALinearPersonAsTheKalmanFilterDoes() {
        var model = Models.without(FilterModel.bundled(), DRIFT_SD, DAY_SD);
        var particles = Particles.of(model, PRIOR, PARTICLES, 7);
        var kalman = kalman();
        double time = 0;
        for (int i = 0; i < DAYS.length; i++) {
            time += DAYS[i];
            particles.advance(DAYS[i]);
            particles.observeOnset(ONSETS[i], ERROR_SD);
            ProcessEstimate exact =
                    kalman.estimationStep(new Onset(time, DAYS[i], new ArrayRealVector(new double[] {ONSETS[i]})));
            double sd = Math.sqrt(exact.getCovariance().getEntry(0, 0));
            double gainSd = Math.sqrt(exact.getCovariance().getEntry(1, 1));
            // Before anything is drawn anew, so that the kernel of this step is not in it.
            assertThat((particles.meanLogTolerance() - exact.getState().getEntry(0)) / sd)
                    .as("mean tolerance after onset %d, in its own spread", i)
                    .isCloseTo(0, within(0.05));
            assertThat(particles.sdLogTolerance() / sd).isCloseTo(1, within(0.05));
            assertThat((particles.meanGain() - exact.getState().getEntry(1)) / gainSd)
                    .as("mean gain after onset %d, in its own spread", i)
                    .isCloseTo(0, within(0.05));
            assertThat(particles.sdGain() / gainSd).isCloseTo(1, within(0.05));
            particles.refresh();
        }
    }

    private static LinearKalmanFilter<Onset> kalman() {
        var start = new ProcessEstimate(
                0,
                new ArrayRealVector(new double[] {PRIOR.logToleranceMean(), PRIOR.gainMean()}),
                MatrixUtils.createRealDiagonalMatrix(
                        new double[] {PRIOR.logToleranceSd() * PRIOR.logToleranceSd(), PRIOR.gainSd() * PRIOR.gainSd()
                        }));
        return new LinearKalmanFilter<>(new CholeskyDecomposer(1e-15, 1e-15), KalmanReferenceTest::evolution, start);
    }

    private static LinearEvolution evolution(Onset onset) {
        double days = onset.days();
        return new LinearEvolution(
                new Array2DRowRealMatrix(new double[][] {{1, days}, {0, 1}}),
                new Array2DRowRealMatrix(2, 1),
                new ArrayRealVector(1),
                MatrixUtils.createRealDiagonalMatrix(new double[] {DAY_SD * DAY_SD * days, DRIFT_SD * DRIFT_SD * days}),
                new Array2DRowRealMatrix(new double[][] {{1, 0}}));
    }
}
