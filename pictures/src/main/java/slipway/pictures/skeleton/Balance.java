package slipway.pictures.skeleton;

import java.util.function.DoubleUnaryOperator;

/** Where a function crosses zero, well enough for a drawing. */
final class Balance {
    private static final int HALVINGS = 18;

    private Balance() {}

    /** The zero of a function within two ends; without a change of sign, the end where it is nearer to zero. */
    static double zero(DoubleUnaryOperator f, double low, double high) {
        double atLow = f.applyAsDouble(low);
        double atHigh = f.applyAsDouble(high);
        if (atLow * atHigh > 0) {
            return Math.abs(atLow) < Math.abs(atHigh) ? low : high;
        }
        double a = low;
        double b = high;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (a + b);
            if (atLow * f.applyAsDouble(middle) <= 0) {
                b = middle;
            } else {
                a = middle;
            }
        }
        return 0.5 * (a + b);
    }
}
