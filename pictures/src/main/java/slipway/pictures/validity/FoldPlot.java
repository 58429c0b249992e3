package slipway.pictures.validity;

import java.util.List;
import java.util.Locale;
import slipway.pictures.svg.Words;

/** Each measurement predicted without its own study, beside what the fit to all studies says. */
public final class FoldPlot {
    private static final int WIDTH = 760;
    private static final int ROW = 26;
    private static final int TOP = 56;

    private FoldPlot() {}

    /**
     * One measurement, all in published standard deviations from the published mean.
     *
     * @param label what was measured
     * @param fitted prediction of the fit to all studies
     * @param left prediction of the fit without its study
     * @param low lower end of the interval that holds 90 % of the draws of that fit
     * @param high upper end
     */
    public record Row(String label, double fitted, double left, double low, double high) {}

    /**
     * The plot as an SVG document.
     *
     * @param aim largest |left| aimed at, shown as a band
     */
    public static String svg(String title, double aim, List<Row> rows) {
        var scale = new Scale(330, 736, -6, 6, List.of(-6.0, -4.0, -2.0, 0.0, 2.0, 4.0, 6.0));
        int bottom = TOP + ROW * rows.size() + 4;
        var canvas = new Canvas(new Words("folds", title, words(rows)), WIDTH, bottom + 62);
        canvas.rect(scale.px(-aim), TOP - 8, scale.px(aim) - scale.px(-aim), bottom - TOP + 8.0, Canvas.BAND);
        scale.draw(canvas, TOP - 8, bottom);
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double y = TOP + ROW * i + ROW / 2.0;
            canvas.text(16, y + 4, 12, Canvas.Anchor.start, row.label());
            AgreementPlot.interval(canvas, scale, row.low(), row.high(), y);
            canvas.hollowDot(scale.px(row.fitted()), y, Canvas.INK);
            canvas.filledDot(scale.px(row.left()), y, Math.abs(row.left()) > aim ? Canvas.ACCENT : Canvas.INK);
        }
        canvas.text(
                16,
                bottom + 36,
                11,
                Canvas.Anchor.start,
                "0: published mean; unit: published standard deviation between people; shaded: the aim, ±"
                        + Scale.number(aim));
        canvas.text(
                16,
                bottom + 52,
                11,
                Canvas.Anchor.start,
                "filled: predicted without the study, with 90 % of its draws; hollow: fitted to all studies");
        return canvas.finish();
    }

    private static String words(List<Row> rows) {
        var words = new StringBuilder("Predicted without its own study, in published standard deviations. ");
        for (Row row : rows) {
            words.append(String.format(
                    Locale.ROOT,
                    "%s: %+.2f (%+.2f to %+.2f), with it %+.2f. ",
                    row.label(),
                    row.left(),
                    row.low(),
                    row.high(),
                    row.fitted()));
        }
        return words.toString().strip();
    }
}
