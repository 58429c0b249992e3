package slipway.mechanics.cable;

/**
 * The curve of tension over strain of {@link Tissue} in every lane, put so that the loops over lanes have little to do:
 * with the offset {@code x = ε − ε₀} and the root {@code r = √(x² + ω²)} the tension is {@code E (x + b r + c)} and its
 * slope {@code E (1 + b x / r)}, where {@code b = (1 − φ) / (1 + φ)}, {@code E = EA (1 + φ) / 2} and c makes the tension
 * of the reference state 0.
 */
final class Toe {
    /** ε₀. */
    final double[] midpoint;
    /** ω². */
    final double[] widthSquared;
    /** b. */
    final double[] bend;
    /** c. */
    final double[] level;
    /** Half of (1 + φ): what the axial stiffness is multiplied by. */
    private final double[] mean;

    Toe(Tissue tissue) {
        int lanes = tissue.lanes();
        midpoint = tissue.toeMidpoint().clone();
        widthSquared = new double[lanes];
        bend = new double[lanes];
        level = new double[lanes];
        mean = new double[lanes];
        for (int l = 0; l < lanes; l++) {
            double slack = tissue.slackSlope()[l];
            double width = tissue.toeWidth()[l];
            mean[l] = 0.5 * (1 + slack);
            bend[l] = (1 - slack) / (1 + slack);
            widthSquared[l] = width * width;
            // In the order of operations of the loops, so that the reference state has no tension at all.
            double x = 0 - midpoint[l];
            level[l] = -(x + bend[l] * Math.sqrt(x * x + widthSquared[l]));
        }
    }

    /** E of every edge, {@code [node][lane]}. */
    double[][] stiffness(double[][] axialStiffness) {
        double[][] scaled = new double[axialStiffness.length][mean.length];
        for (int i = 0; i < scaled.length; i++) {
            for (int l = 0; l < mean.length; l++) {
                scaled[i][l] = axialStiffness[i][l] * mean[l];
            }
        }
        return scaled;
    }

    /** Tension at a strain for a stiffness E. */
    double tension(double stiffness, double strain, int lane) {
        double x = strain - midpoint[lane];
        return stiffness * (x + bend[lane] * Math.sqrt(x * x + widthSquared[lane]) + level[lane]);
    }
}
