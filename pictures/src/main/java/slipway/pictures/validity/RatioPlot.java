package slipway.pictures.validity;

import java.util.List;
import java.util.Locale;
import slipway.pictures.svg.Words;

/** Shares between 0 and 1 as bars, with a limit. */
public final class RatioPlot {
    private static final int WIDTH = 760;
    private static final int ROW = 20;
    private static final int TOP = 52;

    private RatioPlot() {}

    /** One bar. */
    public record Row(String label, double ratio) {}

    /**
     * The plot as an SVG document.
     *
     * @param limit where the dashed line stands; bars beyond it are drawn hollow
     * @param caption what the bars are
     */
    public static String svg(String title, String caption, double limit, List<Row> rows) {
        var scale = new Scale(190, 700, 0, 1, List.of(0.0, 0.2, 0.4, 0.6, 0.8, 1.0));
        int bottom = TOP + ROW * rows.size() + 4;
        var canvas = new Canvas(new Words("ratios", title, words(caption, rows)), WIDTH, bottom + 46);
        scale.draw(canvas, TOP - 6, bottom);
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double y = TOP + ROW * i + ROW / 2.0;
            double width = scale.px(row.ratio()) - scale.px(0);
            canvas.text(16, y + 4, 12, Canvas.Anchor.start, row.label());
            canvas.rect(scale.px(0), y - 6, width, 12, Canvas.INK);
            if (row.ratio() > limit) {
                canvas.rect(scale.px(0) + 1.5, y - 4.5, Math.max(0, width - 3), 9, Canvas.PAPER);
            }
            canvas.text(
                    scale.px(1) + 8, y + 4, 11, Canvas.Anchor.start, String.format(Locale.ROOT, "%.2f", row.ratio()));
        }
        canvas.dashed(scale.px(limit), TOP - 6, scale.px(limit), bottom);
        canvas.text(16, bottom + 36, 11, Canvas.Anchor.start, caption);
        return canvas.finish();
    }

    private static String words(String caption, List<Row> rows) {
        var words = new StringBuilder(caption).append(": ");
        rows.forEach(row -> words.append(String.format(Locale.ROOT, "%s %.2f, ", row.label(), row.ratio())));
        return words.substring(0, words.length() - 2);
    }
}
