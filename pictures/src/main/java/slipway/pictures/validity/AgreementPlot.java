package slipway.pictures.validity;

import java.util.List;
import java.util.Locale;

/**
 * Predicted against published, one line per measurement, all in published standard deviations between people: the
 * published mean is 0, the shaded band its spread, the dot the predicted median with its interval.
 */
public final class AgreementPlot {
    private static final int WIDTH = 760;
    private static final int LABEL_WIDTH = 330;
    private static final int ROW = 26;
    private static final int TOP = 64;
    private static final double EDGE = 3.5;
    private static final String INK = "#22303a";
    private static final String SLATE = "#38505c";
    private static final String ACCENT = "#b3472f";
    private static final String BAND = "#efe6d6";
    private static final String LINE = "#c9c4b8";

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
        int height = TOP + ROW * rows.size() + 46;
        var out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\" role=\"img\""
                        + " aria-labelledby=\"agreement-title agreement-desc\" font-family=\"sans-serif\" fill=\"%s\">",
                WIDTH,
                height,
                WIDTH,
                height,
                INK));
        out.append("<title id=\"agreement-title\">").append(escape(title)).append("</title>");
        out.append("<desc id=\"agreement-desc\">").append(escape(words(rows))).append("</desc>");
        rect(out, 0, 0, WIDTH, height, "#faf8f3");
        text(out, 16, 28, 16, "start", title);
        rect(out, x(-1), TOP - 8, x(1) - x(-1), ROW * rows.size() + 12, BAND);
        for (int tick = -3; tick <= 3; tick++) {
            line(
                    out,
                    x(tick),
                    TOP - 8,
                    x(tick),
                    TOP + ROW * rows.size() + 4,
                    tick == 0 ? INK : LINE,
                    tick == 0 ? 1.5 : 1);
            text(out, x(tick), TOP + ROW * rows.size() + 20, 11, "middle", tick == 0 ? "published" : sign(tick));
        }
        for (int i = 0; i < rows.size(); i++) {
            row(out, rows.get(i), TOP + ROW * i + ROW / 2.0);
        }
        text(
                out,
                16,
                height - 8,
                11,
                "start",
                "in published standard deviations between people · filled: fitted, hollow: kept for validation · line: 90 % of draws");
        return out.append("</svg>").toString();
    }

    private static void row(StringBuilder out, Row row, double y) {
        text(out, 16, y + 4, 12, "start", row.label());
        String colour = Math.abs(row.z()) > 1 ? ACCENT : SLATE;
        line(out, x(row.low()), y, x(row.high()), y, colour, 2);
        out.append(String.format(
                Locale.ROOT,
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"5\" fill=\"%s\" stroke=\"%s\" stroke-width=\"2\"/>",
                x(row.z()),
                y,
                row.fitted() ? colour : "#faf8f3",
                colour));
        for (double end : new double[] {row.low(), row.high()}) {
            if (Math.abs(end) > EDGE) {
                text(out, x(end) + (end > 0 ? -4 : 4), y - 5, 10, end > 0 ? "end" : "start", sign(end));
            }
        }
    }

    private static double x(double z) {
        double clamped = Math.max(-EDGE, Math.min(EDGE, z));
        return LABEL_WIDTH + (clamped + EDGE) / (2 * EDGE) * (WIDTH - LABEL_WIDTH - 24);
    }

    private static String sign(double value) {
        return String.format(Locale.ROOT, value == Math.rint(value) ? "%+.0f" : "%+.1f", value)
                .replace('-', '−');
    }

    private static String words(List<Row> rows) {
        var words = new StringBuilder();
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

    private static void rect(StringBuilder out, double x, double y, double w, double h, String fill) {
        out.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"%s\"/>",
                x,
                y,
                w,
                h,
                fill));
    }

    private static void line(
            StringBuilder out, double x1, double y1, double x2, double y2, String stroke, double width) {
        out.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"%.1f\"/>",
                x1,
                y1,
                x2,
                y2,
                stroke,
                width));
    }

    private static void text(StringBuilder out, double x, double y, int size, String anchor, String text) {
        out.append(String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%d\" text-anchor=\"%s\">%s</text>",
                x,
                y,
                size,
                anchor,
                escape(text)));
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
