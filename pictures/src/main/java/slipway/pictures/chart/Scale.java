package slipway.pictures.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A linear scale from values to pixels.
 *
 * @param low value at the first pixel
 * @param high value at the last pixel, more than low
 */
public record Scale(double low, double high, double firstPixel, double lastPixel) {
    public Scale {
        if (!(low < high) || !Double.isFinite(high - low)) {
            throw new IllegalArgumentException("a scale needs low < high, was %s..%s".formatted(low, high));
        }
    }

    /** The pixel of a value; values outside are put at the nearer end. */
    public double pixel(double value) {
        double t = (value - low) / (high - low);
        return firstPixel + Math.min(1, Math.max(0, t)) * (lastPixel - firstPixel);
    }

    /** Round values within the scale, at most about {@code most} of them. */
    public List<Double> ticks(int most) {
        double rough = (high - low) / Math.max(1, most);
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double share = rough / power;
        double step = power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
        var ticks = new ArrayList<Double>();
        for (long i = (long) Math.ceil(low / step - 1e-9); i * step <= high + 1e-9 * step; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    /** A value as people write it: no more digits than the scale needs. */
    public String text(double value) {
        double rounded = Math.rint(value * 100) / 100;
        if (rounded == Math.rint(rounded)) {
            return Long.toString((long) rounded);
        }
        return String.format(Locale.ROOT, high - low < 2 ? "%.2f" : "%.1f", rounded);
    }
}
