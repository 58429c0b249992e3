package slipway.pictures.validity;

import java.util.List;
import java.util.Locale;

/**
 * A horizontal axis.
 *
 * @param fromPx left end on the page
 * @param toPx right end on the page
 * @param from value at the left end; smaller ones are drawn there
 * @param to value at the right end; greater ones are drawn there
 * @param ticks values with a line
 */
record Scale(double fromPx, double toPx, double from, double to, List<Double> ticks) {
    double px(double value) {
        double held = Math.max(from, Math.min(to, value));
        return fromPx + (held - from) / (to - from) * (toPx - fromPx);
    }

    boolean outside(double value) {
        return value < from || value > to;
    }

    /** Lines and numbers of the ticks between two heights. */
    void draw(Canvas canvas, double top, double bottom) {
        for (double tick : ticks) {
            canvas.line(px(tick), top, px(tick), bottom, tick == 0 ? Canvas.INK : Canvas.GRID, tick == 0 ? 1.5 : 1);
            canvas.text(px(tick), bottom + 16, 11, Canvas.Anchor.middle, number(tick));
        }
    }

    /** A number as a reader writes it: no needless decimals, a true minus sign. */
    static String number(double value) {
        String text = value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.1f", value);
        return text.replace('-', '−');
    }
}
