package slipway.mechanics.parameters;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * The parameters after a fit, on the free scale of {@link Prior}: the average person, how well that is known, and how
 * people differ from it.
 *
 * @param mean the average person, by ordinal of {@link ModelParameter}
 * @param covariance uncertainty of the mean, square, same order
 * @param personSd spread between people of each parameter, independent of one another
 * @param evidenceSha256 fingerprint of the tables that the fit used
 */
public record FittedParameters(double[] mean, double[][] covariance, double[] personSd, String evidenceSha256) {
    /** Draws that every result for a person comes from. */
    public static final int DRAWS = 512;

    /** Seed of those draws; any number would do, it is fixed so that results can be reproduced. */
    public static final long SEED = 20260101L;

    public FittedParameters {
        int size = ModelParameter.values().length;
        if (mean.length != size || covariance.length != size || personSd.length != size) {
            throw new IllegalArgumentException("a fit needs a mean, a covariance row and a spread per parameter");
        }
        for (int i = 0; i < size; i++) {
            if (!Double.isFinite(mean[i]) || !(covariance[i][i] >= 0) || !(personSd[i] >= 0)) {
                throw new IllegalArgumentException(
                        "fit of " + ModelParameter.values()[i].key() + ": values must be finite, spreads not negative");
            }
        }
    }

    /** The fit that ships with the program. */
    public static FittedParameters bundled() {
        return ParameterFile.bundled();
    }

    /** SHA-256 of the parameter file that ships with the program, as 64 hexadecimal digits. */
    public static String sha256() {
        return ParameterFile.bundledSha256();
    }

    /** The average person. */
    public ParameterVector average() {
        return Prior.toNatural(mean);
    }

    /** Standard error of a parameter on its free scale. */
    public double standardError(ModelParameter parameter) {
        return Math.sqrt(covariance[parameter.ordinal()][parameter.ordinal()]);
    }

    /** The draws that every result for a person comes from. */
    public DrawSet standardDraws() {
        return draws(DRAWS, SEED);
    }

    /**
     * Draws of people: the uncertainty of the average person and the spread between people together, sites included.
     * Half of the draws mirror the other half about the mean, which halves the sampling error of medians.
     */
    public DrawSet draws(int count, long seed) {
        RandomGenerator random = new Well19937c(seed);
        RealMatrix root = root(covariance);
        var vectors = new ArrayList<ParameterVector>(count);
        while (vectors.size() < count) {
            double[] shift = shift(root, random);
            vectors.add(shifted(shift, 1));
            if (vectors.size() < count) {
                vectors.add(shifted(shift, -1));
            }
        }
        return new DrawSet(vectors, seed);
    }

    private double[] shift(RealMatrix root, RandomGenerator random) {
        double[] normal = new double[mean.length];
        for (int i = 0; i < normal.length; i++) {
            normal[i] = random.nextGaussian();
        }
        double[] shift = root.operate(normal);
        for (int i = 0; i < shift.length; i++) {
            shift[i] += personSd[i] * random.nextGaussian();
        }
        return shift;
    }

    private ParameterVector shifted(double[] shift, double sign) {
        double[] free = new double[mean.length];
        for (int i = 0; i < free.length; i++) {
            free[i] = mean[i] + sign * shift[i];
        }
        return Prior.toNatural(free);
    }

    /** A square root of a covariance that may be short of full rank; rounding below zero counts as zero. */
    private static RealMatrix root(double[][] covariance) {
        RealMatrix given = new Array2DRowRealMatrix(covariance);
        var eigen = new EigenDecompositionSymmetric(given.add(given.transpose()).scalarMultiply(0.5));
        RealMatrix root = eigen.getV().copy();
        double[] values = eigen.getEigenvalues();
        for (int column = 0; column < values.length; column++) {
            double scale = Math.sqrt(Math.max(0, values[column]));
            for (int row = 0; row < values.length; row++) {
                root.multiplyEntry(row, column, scale);
            }
        }
        return root;
    }

    /** This fit with another spread between people. */
    public FittedParameters withPersonSd(List<Double> sd) {
        return new FittedParameters(
                mean, covariance, sd.stream().mapToDouble(Double::doubleValue).toArray(), evidenceSha256);
    }
}
