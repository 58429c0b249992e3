package slipway.pictures.validity;

import java.util.List;
import java.util.Locale;
import slipway.pictures.svg.Words;

/**
 * Predicted against published, one line per measurement, all in published standard deviations between people: the
 * published mean is 0, the shaded band its spread, the dot the predicted median with its interval.
 */
public final class AgreementPlot {
    private static final int WIDTH = 760;
    private static final int ROW = 26;
    private static final int TOP = 56;
    private static final Scale SCALE = new Scale(330, 736, -3.5, 3.5, List.of(-3.0, -2.0, -1.0, 0.0, 1.0, 2.0, 3.0));

    private AgreementPlot() {}

    /**
     * One measurement.
     *
     * @param label what was measured
     * @param fitted whether the parameters were fitted to it; the others are marked by a hollow dot
     * @param z predicted median minus published mean, in published sd
     * @param low lower end of the predicted interval, same unit
     * @param high upper end
     */
    public record Row(String label, boolean fitted, double z, double low, double high) {}

    /** The plot as an SVG document. */
    public static String svg(String title, List<Row> rows) {
        int bottom = TOP + ROW * rows.size() + 4;
        var canvas = new Canvas(new Words("agreement", title, words(rows)), WIDTH, bottom + 62);
        canvas.rect(SCALE.px(-1), TOP - 8, SCALE.px(1) - SCALE.px(-1), bottom - TOP + 8.0, Canvas.BAND);
        SCALE.draw(canvas, TOP - 8, bottom);
        for (int i = 0; i < rows.size(); i++) {
            row(canvas, rows.get(i), TOP + ROW * i + ROW / 2.0);
        }
        canvas.text(
                16,
                bottom + 36,
                11,
                Canvas.Anchor.start,
                "0: published mean; unit: published standard deviation between people, shaded ±1");
        canvas.text(
                16,
                bottom + 52,
                11,
                Canvas.Anchor.start,
                "filled: fitted, hollow: kept for validation; line: 90 % of the draws");
        return canvas.finish();
    }

    private static void row(Canvas canvas, Row row, double y) {
        canvas.text(16, y + 4, 12, Canvas.Anchor.start, row.label());
        String colour = Math.abs(row.z()) > 1 ? Canvas.ACCENT : Canvas.INK;
        interval(canvas, SCALE, row.low(), row.high(), y);
        if (row.fitted()) {
            canvas.filledDot(SCALE.px(row.z()), y, colour);
        } else {
            canvas.hollowDot(SCALE.px(row.z()), y, colour);
        }
    }

    /** A line from low to high; an end beyond the axis is written out. */
    static void interval(Canvas canvas, Scale scale, double low, double high, double y) {
        canvas.line(scale.px(low), y, scale.px(high), y, Canvas.SOFT, 2);
        for (double end : new double[] {low, high}) {
            if (scale.outside(end)) {
                boolean right = end > 0;
                canvas.text(
                        scale.px(end) + (right ? -2 : 2),
                        y - 5,
                        10,
                        right ? Canvas.Anchor.end : Canvas.Anchor.start,
                        (right ? "→ " : "← ") + Scale.number(end));
            }
        }
    }

    private static String words(List<Row> rows) {
        var words = new StringBuilder("Predicted minus published, in published standard deviations. ");
        for (Row row : rows) {
            words.append(String.format(
                    Locale.ROOT,
                    "%s: %+.2f (%+.2f to %+.2f)%s. ",
                    row.label(),
                    row.z(),
                    row.low(),
                    row.high(),
                    row.fitted() ? "" : ", not fitted"));
        }
        return words.toString().strip();
    }
}
