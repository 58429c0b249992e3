package slipway.pictures.validity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slipway.pictures.svg.Words;

/** How two facts of practice come out as the load is spread from the site over the whole tract; two panels. */
public final class FactPlot {
    private static final int WIDTH = 760;
    private static final int HEIGHT = 396;
    private static final int TOP = 78;
    private static final int BOTTOM = 306;

    private FactPlot() {}

    /**
     * One fact.
     *
     * @param name what is drawn
     * @param unitFrom lower end of the axis, deg
     * @param unitTo upper end of the axis, deg
     * @param knownFrom lower end of what is known of people, deg, shown as a band
     * @param knownTo upper end, deg
     * @param points what the model says, by rising spread
     */
    public record Panel(
            String name, double unitFrom, double unitTo, double knownFrom, double knownTo, List<Point> points) {
        public Panel {
            points = List.copyOf(points);
        }
    }

    /** What the model says at one spread of the load (0 to 1): median and the interval that holds 90 % of the draws. */
    public record Point(double spread, double median, double low, double high) {}

    /** The plot as an SVG document. */
    public static String svg(String title, Panel left, Panel right) {
        var canvas = new Canvas(new Words("facts", title, words(left) + " " + words(right)), WIDTH, HEIGHT);
        panel(canvas, left, 56);
        panel(canvas, right, 436);
        canvas.text(
                16,
                HEIGHT - 28,
                11,
                Canvas.Anchor.start,
                "across: share of the mean strain along the tract in the load");
        canvas.text(
                16,
                HEIGHT - 12,
                11,
                Canvas.Anchor.start,
                "line: median; dashed: 90 % of the draws; shaded: what is known of people");
        return canvas.finish();
    }

    private static void panel(Canvas canvas, Panel panel, int leftPx) {
        var across = new Scale(leftPx, leftPx + 290.0, 0, 1, List.of(0.0, 0.25, 0.5, 0.75, 1.0));
        canvas.text(leftPx - 40.0, TOP - 18, 12, Canvas.Anchor.start, panel.name());
        double bandTop = y(panel, panel.knownTo());
        canvas.rect(leftPx, bandTop, 290, y(panel, panel.knownFrom()) - bandTop, Canvas.BAND);
        for (int i = 0; i <= 4; i++) {
            double value = panel.unitFrom() + i * (panel.unitTo() - panel.unitFrom()) / 4;
            canvas.line(leftPx, y(panel, value), leftPx + 290.0, y(panel, value), Canvas.GRID, 1);
            canvas.text(leftPx - 6.0, y(panel, value) + 4, 11, Canvas.Anchor.end, Scale.number(value) + "°");
        }
        for (String label : List.of("0", "0.25", "0.5", "0.75", "1")) {
            canvas.text(across.px(Double.parseDouble(label)), BOTTOM + 18, 11, Canvas.Anchor.middle, label);
        }
        canvas.text(leftPx, BOTTOM + 38, 11, Canvas.Anchor.start, "strain at the site");
        canvas.text(leftPx + 290.0, BOTTOM + 38, 11, Canvas.Anchor.end, "mean strain");
        var points = panel.points();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double x1 = across.px(a.spread());
            double x2 = across.px(b.spread());
            canvas.dashed(x1, y(panel, a.low()), x2, y(panel, b.low()));
            canvas.dashed(x1, y(panel, a.high()), x2, y(panel, b.high()));
            canvas.line(x1, y(panel, a.median()), x2, y(panel, b.median()), Canvas.INK, 3);
        }
    }

    private static double y(Panel panel, double value) {
        double held = Math.max(panel.unitFrom(), Math.min(panel.unitTo(), value));
        return BOTTOM - (held - panel.unitFrom()) / (panel.unitTo() - panel.unitFrom()) * (BOTTOM - TOP);
    }

    private static String words(Panel panel) {
        var parts = new ArrayList<String>();
        for (Point p : panel.points()) {
            parts.add(String.format(
                    Locale.ROOT, "%.0f (%.0f to %.0f) at a spread of %.2f", p.median(), p.low(), p.high(), p.spread()));
        }
        return panel.name() + ": " + String.join("; ", parts) + "; known of people: " + Scale.number(panel.knownFrom())
                + " to " + Scale.number(panel.knownTo()) + ".";
    }
}
