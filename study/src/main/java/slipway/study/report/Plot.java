package slipway.study.report;

import slipway.pictures.look.Palette;
import slipway.pictures.svg.Svg;
import slipway.pictures.svg.Words;

/** A plot under way: title, one horizontal scale, and the few strokes that the study's plots are made of. */
final class Plot {
    static final String INK = Palette.PAPER.ink().hex();
    static final String SOFT = Palette.PAPER.soft().hex();
    static final String ACCENT = Palette.PAPER.accent().hex();
    static final int WIDTH = 760;
    static final double LEFT = 190;
    static final double RIGHT = 720;
    private static final int TITLE_SIZE = 15;
    private static final int TEXT_SIZE = 12;

    private final Svg svg = new Svg();
    private final Words words;
    private final int height;
    private final double least;
    private final double most;

    Plot(Words words, int height, double least, double most) {
        this.words = words;
        this.height = height;
        this.least = least;
        this.most = most;
        text(16, 24, TITLE_SIZE, "start", words.title());
    }

    double px(double value) {
        double share = (value - least) / (most - least);
        return LEFT + Math.min(1, Math.max(0, share)) * (RIGHT - LEFT);
    }

    /** Ticks with their labels along the foot, and a light line up from each. */
    void scale(double top, double foot, double step) {
        for (double tick = least; tick <= most + step / 1000; tick += step) {
            line(px(tick), top, px(tick), foot, SOFT, 0.5, "");
            text(px(tick), foot + 16, TEXT_SIZE, "middle", Svg.number(Math.rint(tick * 10) / 10));
        }
    }

    void line(double x1, double y1, double x2, double y2, String stroke, double width, String dashes) {
        svg.path(
                "M" + Svg.number(x1) + " " + Svg.number(y1) + "L" + Svg.number(x2) + " " + Svg.number(y2),
                "stroke",
                stroke,
                "stroke-width",
                Svg.number(width),
                "stroke-dasharray",
                dashes.isEmpty() ? "none" : dashes,
                "fill",
                "none");
    }

    void curve(double[] x, double[] y, String stroke, double width, String dashes) {
        var data = new StringBuilder();
        for (int i = 0; i < x.length; i++) {
            data.append(i == 0 ? 'M' : 'L').append(Svg.number(x[i])).append(' ').append(Svg.number(y[i]));
        }
        svg.path(
                data.toString(),
                "stroke",
                stroke,
                "stroke-width",
                Svg.number(width),
                "stroke-dasharray",
                dashes.isEmpty() ? "none" : dashes,
                "fill",
                "none");
    }

    void dot(double x, double y, boolean filled) {
        svg.element(
                "circle",
                "cx",
                Svg.number(x),
                "cy",
                Svg.number(y),
                "r",
                "4.5",
                "fill",
                filled ? ACCENT : "#ffffff",
                "stroke",
                filled ? ACCENT : INK,
                "stroke-width",
                "2");
    }

    void label(double x, double y, String anchor, String text) {
        text(x, y, TEXT_SIZE, anchor, text);
    }

    private void text(double x, double y, int size, String anchor, String text) {
        svg.text(
                text,
                "x",
                Svg.number(x),
                "y",
                Svg.number(y),
                "font-size",
                Integer.toString(size),
                "text-anchor",
                anchor,
                "font-family",
                "sans-serif",
                "fill",
                INK);
    }

    String finish() {
        return svg.document(words, 0, 0, WIDTH, height);
    }
}
