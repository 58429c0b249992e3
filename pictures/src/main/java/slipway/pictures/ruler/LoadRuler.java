package slipway.pictures.ruler;

import java.util.ArrayList;
import java.util.List;
import slipway.pictures.chart.LabelRows;
import slipway.pictures.chart.Scale;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.Svg;
import slipway.pictures.svg.Words;

/**
 * Draws the load ruler: above the scale the tests, on it the tolerance as a soft band, below it one line for each
 * exercise. Shapes differ as well as colours: band, ticks, bars, dashed line.
 */
public final class LoadRuler {
    private static final double TYPE = 13;
    private static final double ROW = 18;
    private static final double SIDE = 14;
    private static final double BAND = 26;
    private static final double EXERCISE = 36;

    private final LoadScale loads;
    private final Palette palette;
    private final int width;
    private final Scale scale;
    private final Svg svg = new Svg();

    private LoadRuler(LoadScale loads, Palette palette, int width) {
        this.loads = loads;
        this.palette = palette;
        this.width = width;
        double span = loads.largest() - loads.smallest();
        this.scale = new Scale(loads.smallest(), loads.largest() + 0.06 * span, SIDE, width - SIDE);
    }

    /**
     * The ruler as SVG.
     *
     * @param width in px, 240 to 2000
     * @param idPrefix makes ids unique within a page
     */
    public static String svg(LoadScale loads, Palette palette, int width, String idPrefix) {
        if (width < 240 || width > 2000) {
            throw new IllegalArgumentException(
                    "the width of a load ruler must be within 240 and 2000 px, was " + width);
        }
        return new LoadRuler(loads, palette, width).draw(idPrefix);
    }

    private String draw(String idPrefix) {
        svg.open("font-family", "DejaVu Sans, sans-serif", "font-size", Svg.number(TYPE));
        double line = tests();
        band(line);
        double bottom = axis(line + BAND);
        double end = bottom + 10 + loads.exercises().size() * EXERCISE;
        aim(line, end);
        exercises(bottom + 10);
        svg.close();
        return svg.document(new Words(idPrefix, "Load ruler", description()), 0, 0, width, Math.round(end + 8));
    }

    /** Ticks with their labels in rows above the band; the y at which the band starts. */
    private double tests() {
        List<Double> places = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        loads.tests().forEach(test -> {
            places.add(scale.pixel(test.load()));
            texts.add(test.label());
        });
        loads.tolerance().ifPresent(t -> {
            places.add(scale.pixel(t.p50()));
            texts.add("tolerance about " + scale.text(t.p50()));
        });
        int named = places.size();
        loads.aimed().ifPresent(aim -> {
            places.add(scale.pixel(aim.load()));
            texts.add(aim.label());
        });
        List<LabelRows.Placed> placed = LabelRows.of(places, texts, TYPE, SIDE, width - SIDE);
        int rows = LabelRows.rows(placed);
        double line = 8 + rows * ROW + 14;
        for (int i = 0; i < placed.size(); i++) {
            double from = testY(rows, placed.get(i)) + 4;
            if (i < loads.tests().size()) {
                onset(places.get(i), from, line);
            } else {
                boolean aim = i >= named;
                stroke(places.get(i), from, places.get(i), line, aim ? accent() : ink(), aim ? 1 : 2, aim ? "4 3" : "");
            }
        }
        for (int i = 0; i < placed.size(); i++) {
            boolean aim = i >= named;
            LabelRows.Placed each = placed.get(i);
            label(each.middle(), testY(rows, each), each.text(), "middle", aim ? accent() : ink());
        }
        return line;
    }

    private static double testY(int rows, LabelRows.Placed label) {
        return 8 + (rows - 1 - label.row()) * ROW + TYPE;
    }

    /** The mark of a load at which symptoms began. */
    private void onset(double x, double from, double line) {
        stroke(x, from, x, line, palette.soft().hex(), 1, "");
        svg.path("M" + n(x - 5) + " " + n(line - 7) + "h10l-5 7z", "fill", ink());
    }

    private String accent() {
        return palette.accent().hex();
    }

    private void band(double y) {
        svg.element(
                "rect",
                "x",
                n(SIDE),
                "y",
                n(y),
                "width",
                n(width - 2 * SIDE),
                "height",
                n(BAND),
                "fill",
                palette.paper().mixed(palette.soft(), 0.10).hex());
        loads.tolerance().ifPresent(t -> {
            rect(t.p10(), t.p90(), y, palette.mat().mixed(palette.paper(), 0.45).hex());
            rect(t.p25(), t.p75(), y, palette.mat().hex());
            double x = scale.pixel(t.p50());
            stroke(x, y, x, y + BAND, ink(), 3, "");
        });
    }

    private void rect(double from, double to, double y, String fill) {
        double x = scale.pixel(from);
        svg.element("rect", "x", n(x), "y", n(y), "width", n(scale.pixel(to) - x), "height", n(BAND), "fill", fill);
    }

    private double axis(double y) {
        stroke(SIDE, y, width - SIDE, y, ink(), 1.5, "");
        for (double tick : scale.ticks(Math.max(3, width / 90))) {
            double x = scale.pixel(tick);
            stroke(x, y, x, y + 5, ink(), 1.5, "");
            label(x, y + 6 + TYPE, scale.text(tick), "middle", palette.soft().hex());
        }
        label(
                width - SIDE,
                y + 6 + TYPE + ROW,
                "load above rest, " + loads.unit(),
                "end",
                palette.soft().hex());
        return y + 6 + TYPE + ROW;
    }

    /** One line of text and one bar under it for each exercise. */
    private void exercises(double top) {
        double y = top;
        for (LoadScale.Bar bar : loads.exercises()) {
            double from = scale.pixel(bar.low());
            double to = scale.pixel(bar.high());
            double sure = scale.pixel(bar.upper());
            String text = LabelRows.of(List.of(from), List.of(bar.label()), TYPE, SIDE, width - SIDE)
                    .get(0)
                    .text();
            double room = LabelRows.widthOf(text, TYPE);
            label(Math.min(from, width - SIDE - room), y + TYPE, text, "start", ink());
            double middle = y + TYPE + 11;
            stroke(to, middle, sure, middle, ink(), 1.5, "");
            stroke(sure, middle - 4, sure, middle + 4, ink(), 1.5, "");
            svg.element(
                    "rect",
                    "x",
                    n(from),
                    "y",
                    n(middle - 5),
                    "width",
                    n(Math.max(3, to - from)),
                    "height",
                    "10",
                    "rx",
                    "3",
                    "fill",
                    palette.soft().hex());
            y += EXERCISE;
        }
    }

    private void aim(double top, double bottom) {
        loads.aimed().ifPresent(aim -> {
            double x = scale.pixel(aim.load());
            stroke(x, top, x, bottom, palette.accent().hex(), 2, "6 4");
        });
    }

    private String ink() {
        return palette.words().hex();
    }

    private static String n(double value) {
        return Svg.number(value);
    }

    private void stroke(double x0, double y0, double x1, double y1, String colour, double wide, String dashes) {
        var attributes = new ArrayList<>(
                List.of("x1", n(x0), "y1", n(y0), "x2", n(x1), "y2", n(y1), "stroke", colour, "stroke-width", n(wide)));
        if (!dashes.isEmpty()) {
            attributes.addAll(List.of("stroke-dasharray", dashes));
        }
        svg.element("line", attributes.toArray(String[]::new));
    }

    /** Words with a rim of paper, so that no line runs through them. */
    private void label(double x, double y, String text, String anchor, String colour) {
        String paper = palette.paper().hex();
        svg.text(
                text,
                "x",
                n(x),
                "y",
                n(y),
                "text-anchor",
                anchor,
                "fill",
                paper,
                "stroke",
                paper,
                "stroke-width",
                "4",
                "stroke-linejoin",
                "round",
                "aria-hidden",
                "true");
        svg.text(text, "x", n(x), "y", n(y), "text-anchor", anchor, "fill", colour);
    }

    /** The same in words, for whoever does not see it. */
    private String description() {
        var words = new StringBuilder();
        loads.tolerance()
                .ifPresentOrElse(
                        t -> words.append("Tolerance about %s %s, likely between %s and %s."
                                .formatted(
                                        scale.text(t.p50()), loads.unit(), scale.text(t.p10()), scale.text(t.p90()))),
                        () -> words.append("The tolerance is not known yet."));
        loads.aimed().ifPresent(aim -> words.append(" %s: %s.".formatted(aim.label(), scale.text(aim.load()))));
        loads.tests()
                .forEach(test ->
                        words.append(" Symptoms began in %s at %s.".formatted(test.label(), scale.text(test.load()))));
        loads.exercises()
                .forEach(bar -> words.append(" %s: from %s to %s, at most about %s."
                        .formatted(
                                bar.label(), scale.text(bar.low()), scale.text(bar.high()), scale.text(bar.upper()))));
        return words.toString();
    }
}
