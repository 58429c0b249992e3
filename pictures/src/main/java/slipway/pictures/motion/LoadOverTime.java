package slipway.pictures.motion;

import java.util.List;
import java.util.Locale;
import slipway.pictures.chart.Scale;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.Svg;
import slipway.pictures.svg.Words;

/** Load at a site over the time of a motion: a line for the median, a band for 90 % of the draws. */
public final class LoadOverTime {
    private static final int HEIGHT = 260;
    private static final int LEFT = 56;
    private static final int RIGHT = 16;
    private static final int TOP = 48;
    private static final int BOTTOM = 46;
    private static final int TICKS = 6;

    private LoadOverTime() {}

    /** Load at one moment. */
    public record Point(double seconds, double loadPct, double lowPct, double highPct) {}

    /**
     * The picture as an SVG document.
     *
     * @param points at least two, rising in time
     */
    public static String svg(String title, List<Point> points, Palette palette, int width) {
        return svg(
                "motion",
                title,
                "load above the first posture, % strain; band: 90 % of the draws",
                points,
                palette,
                width);
    }

    /** Where a share of the whole time stands in a picture of this width, from its left edge. */
    public static double x(double share, int width) {
        return LEFT + share * (width - LEFT - RIGHT);
    }

    /**
     * The picture with a caption that says from where the load is counted.
     *
     * @param idPrefix makes ids unique within a page
     */
    public static String svg(
            String idPrefix, String title, String caption, List<Point> points, Palette palette, int width) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("load over time needs two moments, got " + points.size());
        }
        double end = points.get(points.size() - 1).seconds();
        double low =
                Math.min(0, points.stream().mapToDouble(Point::lowPct).min().orElse(0));
        double high =
                Math.max(0.5, points.stream().mapToDouble(Point::highPct).max().orElse(0));
        var time = new Scale(0, Math.max(end, 0.001), LEFT, width - RIGHT);
        var load = new Scale(low, high, HEIGHT - BOTTOM, TOP);
        String ink = palette.words().hex();
        String soft = palette.soft().hex();
        var svg = new Svg().open("font-family", "sans-serif", "font-size", "13", "fill", ink);
        svg.element(
                "rect",
                "width",
                "" + width,
                "height",
                "" + HEIGHT,
                "fill",
                palette.paper().hex());
        svg.text(title, "x", "16", "y", "26", "font-size", "15");
        for (double tick : load.ticks(TICKS)) {
            String y = Svg.number(load.pixel(tick));
            line(svg, "" + LEFT, y, "" + (width - RIGHT), y, soft, "0.6");
            svg.text(load.text(tick), "x", "" + (LEFT - 8), "y", y, "dy", "4", "text-anchor", "end");
        }
        for (double tick : time.ticks(TICKS)) {
            svg.text(
                    time.text(tick) + " s",
                    "x",
                    Svg.number(time.pixel(tick)),
                    "y",
                    "" + (HEIGHT - BOTTOM + 20),
                    "text-anchor",
                    "middle");
        }
        svg.path(band(points, time, load), "fill", palette.mat().hex(), "stroke", "none");
        svg.path(median(points, time, load), "fill", "none", "stroke", ink, "stroke-width", "2.5");
        svg.text(caption, "x", "16", "y", "" + (HEIGHT - 8));
        svg.close();
        return svg.document(new Words(idPrefix, title, words(points)), 0, 0, width, HEIGHT);
    }

    private static void line(Svg svg, String x1, String y1, String x2, String y2, String stroke, String width) {
        svg.element("line", "x1", x1, "y1", y1, "x2", x2, "y2", y2, "stroke", stroke, "stroke-width", width);
    }

    private static String median(List<Point> points, Scale time, Scale load) {
        var path = new StringBuilder();
        for (Point point : points) {
            step(path, time.pixel(point.seconds()), load.pixel(point.loadPct()));
        }
        return path.toString();
    }

    private static String band(List<Point> points, Scale time, Scale load) {
        var path = new StringBuilder();
        for (Point point : points) {
            step(path, time.pixel(point.seconds()), load.pixel(point.highPct()));
        }
        for (int i = points.size() - 1; i >= 0; i--) {
            step(
                    path,
                    time.pixel(points.get(i).seconds()),
                    load.pixel(points.get(i).lowPct()));
        }
        return path.append('Z').toString();
    }

    private static void step(StringBuilder path, double x, double y) {
        path.append(path.isEmpty() ? 'M' : 'L')
                .append(Svg.number(x))
                .append(' ')
                .append(Svg.number(y));
    }

    private static String words(List<Point> points) {
        Point peak = points.get(0);
        for (Point point : points) {
            peak = point.loadPct() > peak.loadPct() ? point : peak;
        }
        return String.format(
                Locale.ROOT,
                "Load rises to %.1f %% strain (%.1f to %.1f) at %.1f s and ends at %.1f %% after %.1f s.",
                peak.loadPct(),
                peak.lowPct(),
                peak.highPct(),
                peak.seconds(),
                points.get(points.size() - 1).loadPct(),
                points.get(points.size() - 1).seconds());
    }
}
