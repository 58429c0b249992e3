package slipway.pictures.validity;

import java.util.List;
import java.util.Locale;
import slipway.pictures.svg.Words;

/** Forms of the model side by side: how far each misses the studies that it was not fitted to. */
public final class FormPlot {
    private static final int WIDTH = 760;
    private static final int ROW = 34;
    private static final int TOP = 56;

    private FormPlot() {}

    /**
     * One form.
     *
     * @param name its name
     * @param absoluteZ |z| of every left-out measurement
     * @param mean their mean
     * @param rootMeanSquare root of the mean of their squares
     */
    public record Row(String name, List<Double> absoluteZ, double mean, double rootMeanSquare) {
        public Row {
            absoluteZ = List.copyOf(absoluteZ);
        }
    }

    /**
     * The plot as an SVG document.
     *
     * @param aim mean |z| aimed at
     */
    public static String svg(String title, double aim, List<Row> rows) {
        double largest = rows.stream()
                .flatMap(row -> row.absoluteZ().stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(1);
        var scale = new Scale(
                180, 736, 0, Math.max(4, Math.ceil(largest)), List.of(0.0, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0));
        int bottom = TOP + ROW * rows.size() + 4;
        var canvas = new Canvas(new Words("forms", title, words(rows)), WIDTH, bottom + 46);
        scale.draw(canvas, TOP - 8, bottom);
        canvas.dashed(scale.px(aim), TOP - 8, scale.px(aim), bottom);
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double y = TOP + ROW * i + ROW / 2.0;
            canvas.text(16, y + 4, 12, Canvas.Anchor.start, row.name());
            canvas.line(scale.px(0), y, scale.px(scale.to()), y, Canvas.GRID, 1);
            row.absoluteZ().forEach(z -> canvas.hollowDot(scale.px(z), y, Canvas.SOFT));
            canvas.diamond(scale.px(row.rootMeanSquare()), y);
            canvas.tick(scale.px(row.mean()), y);
        }
        canvas.text(
                16,
                bottom + 36,
                11,
                Canvas.Anchor.start,
                "|z| of every left-out measurement (rings), their mean (bar), root mean square (diamond); dashed: aim of the mean, "
                        + Scale.number(aim));
        return canvas.finish();
    }

    private static String words(List<Row> rows) {
        var words = new StringBuilder("Misses of left-out studies in published standard deviations. ");
        for (Row row : rows) {
            words.append(String.format(
                    Locale.ROOT,
                    "%s: mean %.2f, root mean square %.2f. ",
                    row.name(),
                    row.mean(),
                    row.rootMeanSquare()));
        }
        return words.toString().strip();
    }
}
