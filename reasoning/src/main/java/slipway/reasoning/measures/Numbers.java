package slipway.reasoning.measures;

import java.util.Locale;

/** Numbers as people write them: at most two decimals, no needless zeros, no minus before a zero. */
public final class Numbers {
    private Numbers() {}

    /** {@code 5}, {@code 35.56}, {@code 0.3}. */
    public static String text(double value) {
        double rounded = Math.rint(value * 100) / 100 + 0.0;
        if (rounded == Math.rint(rounded) && Math.abs(rounded) < 1e15) {
            return Long.toString((long) rounded);
        }
        String text = String.format(Locale.ROOT, "%.2f", rounded);
        return text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
    }
}
