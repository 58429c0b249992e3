package slipway.mechanics.calibration;

import java.util.List;

/**
 * The outcome of a calibration, on the free scale of the priors.
 *
 * @param free the most probable average person
 * @param covariance its uncertainty, widened by the square of {@code widening} where the model misses
 * @param jacobian change of each row per change of each free parameter, {@code [row][parameter]}
 * @param residuals what the fit says about each row
 * @param widening factor on the errors of the data, 1 when the model fits within them
 */
public record Fit(
        double[] free, double[][] covariance, double[][] jacobian, List<Residual> residuals, double widening) {

    /**
     * One fitted row.
     *
     * @param row the measurement
     * @param predicted prediction for the average person, in the unit of the row
     * @param sigma standard error that the row was weighted with
     */
    public record Residual(EvidenceRow row, double predicted, double sigma) {
        /** Predicted minus published mean, in published standard deviations between people. */
        public double z() {
            return (predicted - row.published().mean().orElseThrow())
                    / row.published().sd().orElseThrow();
        }
    }
}
