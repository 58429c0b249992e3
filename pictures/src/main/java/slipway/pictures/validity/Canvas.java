package slipway.pictures.validity;

import slipway.pictures.look.Colour;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.Svg;
import slipway.pictures.svg.Words;

/** A plot under way: a titled page with the few strokes that plots are made of. What differs, differs in shape too. */
final class Canvas {
    static final String INK = Palette.PAPER.ink().hex();
    static final String SOFT = Palette.PAPER.soft().hex();
    static final String ACCENT = Palette.PAPER.accent().hex();
    static final String PAPER = Palette.PAPER.paper().hex();
    static final String BAND = new Colour(0xe9dfcc).hex();
    static final String GRID = new Colour(0xc9c4b8).hex();

    /** Where a text ends or begins. */
    enum Anchor {
        start,
        middle,
        end
    }

    private final Svg svg = new Svg();
    private final int width;
    private final int height;
    private final Words words;

    Canvas(Words words, int width, int height) {
        this.words = words;
        this.width = width;
        this.height = height;
        rect(0, 0, width, height, PAPER);
        text(16, 28, 16, Anchor.start, words.title());
    }

    void rect(double x, double y, double w, double h, String fill) {
        svg.element(
                "rect",
                "x",
                Svg.number(x),
                "y",
                Svg.number(y),
                "width",
                Svg.number(w),
                "height",
                Svg.number(h),
                "fill",
                fill);
    }

    void line(double x1, double y1, double x2, double y2, String stroke, double strokeWidth) {
        svg.element(
                "line",
                "x1",
                Svg.number(x1),
                "y1",
                Svg.number(y1),
                "x2",
                Svg.number(x2),
                "y2",
                Svg.number(y2),
                "stroke",
                stroke,
                "stroke-width",
                Svg.number(strokeWidth));
    }

    void dashed(double x1, double y1, double x2, double y2) {
        svg.path("M" + at(x1, y1) + "L" + at(x2, y2), "stroke", INK, "stroke-width", "1", "stroke-dasharray", "4 3");
    }

    void filledDot(double x, double y, String colour) {
        dot(x, y, colour, colour);
    }

    void hollowDot(double x, double y, String colour) {
        dot(x, y, PAPER, colour);
    }

    private void dot(double x, double y, String fill, String stroke) {
        svg.element(
                "circle",
                "cx",
                Svg.number(x),
                "cy",
                Svg.number(y),
                "r",
                "4.5",
                "fill",
                fill,
                "stroke",
                stroke,
                "stroke-width",
                "2");
    }

    void tick(double x, double y) {
        line(x, y - 8, x, y + 8, INK, 3);
    }

    void diamond(double x, double y) {
        svg.path(
                "M" + at(x - 6, y) + "L" + at(x, y - 6) + "L" + at(x + 6, y) + "L" + at(x, y + 6) + "Z",
                "fill",
                PAPER,
                "stroke",
                INK,
                "stroke-width",
                "2");
    }

    /** A curve through points, or with a fill the area that they bound. */
    void curve(double[] x, double[] y, String stroke, String fill) {
        var data = new StringBuilder();
        for (int i = 0; i < x.length; i++) {
            data.append(i == 0 ? 'M' : 'L').append(at(x[i], y[i]));
        }
        svg.path(data.toString(), "stroke", stroke, "stroke-width", "2", "fill", fill);
    }

    void text(double x, double y, int size, Anchor anchor, String text) {
        svg.text(
                text,
                "x",
                Svg.number(x),
                "y",
                Svg.number(y),
                "font-size",
                Integer.toString(size),
                "text-anchor",
                anchor.name(),
                "font-family",
                "sans-serif",
                "fill",
                INK);
    }

    private static String at(double x, double y) {
        return Svg.number(x) + " " + Svg.number(y);
    }

    String finish() {
        return svg.document(words, 0, 0, width, height);
    }
}
