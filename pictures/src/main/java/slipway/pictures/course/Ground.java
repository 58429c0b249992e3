package slipway.pictures.course;

import java.util.ArrayList;
import java.util.List;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.Svg;

/** Lines, words and marks of the course pictures in the colours of a palette. */
final class Ground {
    static final double TYPE = 13;
    static final double ROW = 18;

    private final Svg svg = new Svg();
    private final Palette palette;

    Ground(Palette palette) {
        this.palette = palette;
        svg.open("font-family", "DejaVu Sans, sans-serif", "font-size", n(TYPE));
    }

    Svg svg() {
        return svg;
    }

    String ink() {
        return palette.words().hex();
    }

    String soft() {
        return palette.soft().hex();
    }

    String accent() {
        return palette.accent().hex();
    }

    String paper() {
        return palette.paper().hex();
    }

    /** Ground of a panel, a little darker or lighter than the page. */
    String panel() {
        return palette.paper().mixed(palette.soft(), 0.09).hex();
    }

    /** A soft area; {@code more} for its middle. */
    String area(boolean more) {
        return more
                ? palette.mat().hex()
                : palette.mat().mixed(palette.paper(), 0.45).hex();
    }

    void line(double x0, double y0, double x1, double y1, String colour, double wide, String dashes) {
        var attributes = new ArrayList<>(
                List.of("x1", n(x0), "y1", n(y0), "x2", n(x1), "y2", n(y1), "stroke", colour, "stroke-width", n(wide)));
        if (!dashes.isEmpty()) {
            attributes.addAll(List.of("stroke-dasharray", dashes));
        }
        svg.element("line", attributes.toArray(String[]::new));
    }

    void rect(double x, double y, double wide, double high, String fill) {
        svg.element("rect", "x", n(x), "y", n(y), "width", n(wide), "height", n(high), "fill", fill);
    }

    void area(String data, String fill) {
        svg.path(data, "fill", fill, "stroke", "none");
    }

    void stroke(String data, String colour, double wide) {
        svg.path(data, "fill", "none", "stroke", colour, "stroke-width", n(wide), "stroke-linejoin", "round");
    }

    /** A mark with an outline of paper, so that neighbours stay apart. */
    void mark(String data, String fill, String outline) {
        svg.path(data, "fill", fill, "stroke", outline, "stroke-width", "1.2", "stroke-linejoin", "round");
    }

    void words(double x, double y, String text, String anchor, String colour) {
        svg.text(
                text,
                "x",
                n(x),
                "y",
                n(y),
                "text-anchor",
                anchor,
                "fill",
                paper(),
                "stroke",
                paper(),
                "stroke-width",
                "4",
                "stroke-linejoin",
                "round",
                "aria-hidden",
                "true");
        plain(x, y, text, anchor, colour);
    }

    void plain(double x, double y, String text, String anchor, String colour) {
        svg.text(text, "x", n(x), "y", n(y), "text-anchor", anchor, "fill", colour);
    }

    static String n(double value) {
        return Svg.number(value);
    }
}
