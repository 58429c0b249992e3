package slipway.pictures.nerve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slipway.pictures.chart.LabelRows;
import slipway.pictures.chart.Scale;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.Svg;
import slipway.pictures.svg.Words;

/**
 * Draws the straightened nerve: the pathway as a strip with landmarks, above it the strain, below it arrows for the glide,
 * suspected sites with their probability.
 */
public final class StraightenedNerve {
    private static final double TYPE = 13;
    private static final double ROW = 18;
    private static final double LEFT = 46;
    private static final double RIGHT = 14;
    private static final double STRAIN_HEIGHT = 78;
    private static final double NERVE = 9;
    private static final double GLIDE_HEIGHT = 34;

    private final NerveStrip strip;
    private final Palette palette;
    private final int width;
    private final Scale along;
    private final Reach reach;
    private final Svg svg = new Svg();

    /**
     * What the axes reach at least, so that strips can be compared by eye and stand still while something moves.
     *
     * @param strainPct top of the strain axis, %, 0 or more
     * @param glideMm glide of the longest arrow, mm, 0 or more
     */
    public record Reach(double strainPct, double glideMm) {
        /** Axes that just hold what is shown. */
        public static final Reach TIGHT = new Reach(1, 0);

        public Reach {
            if (!(strainPct >= 0 && glideMm >= 0)) {
                throw new IllegalArgumentException(
                        "what axes reach must be 0 or more, was %s %% and %s mm".formatted(strainPct, glideMm));
            }
        }
    }

    private StraightenedNerve(NerveStrip strip, Palette palette, int width, Reach reach) {
        this.reach = reach;
        this.strip = strip;
        this.palette = palette;
        this.width = width;
        this.along = new Scale(0, 1, LEFT, width - RIGHT);
    }

    /**
     * The strip as SVG.
     *
     * @param width in px, 280 to 2000
     * @param idPrefix makes ids unique within a page
     */
    public static String svg(NerveStrip strip, Palette palette, int width, String idPrefix) {
        return svg(strip, palette, width, idPrefix, Reach.TIGHT);
    }

    /** The strip as SVG with axes that reach at least so far. */
    public static String svg(NerveStrip strip, Palette palette, int width, String idPrefix, Reach reach) {
        if (width < 280 || width > 2000) {
            throw new IllegalArgumentException(
                    "the width of a nerve strip must be within 280 and 2000 px, was " + width);
        }
        return new StraightenedNerve(strip, palette, width, reach).draw(idPrefix);
    }

    private String draw(String idPrefix) {
        svg.open("font-family", "DejaVu Sans, sans-serif", "font-size", Svg.number(TYPE));
        double top = siteLabels(8);
        double nerve = strain(top + 8);
        svg.element(
                "rect",
                "x",
                n(LEFT),
                "y",
                n(nerve),
                "width",
                n(width - LEFT - RIGHT),
                "height",
                n(NERVE),
                "rx",
                "4.5",
                "fill",
                palette.cloth().hex(),
                "stroke",
                ink(),
                "stroke-width",
                "1.2");
        siteMarks(top, nerve);
        double glide = glide(nerve + NERVE + 4);
        double bottom = landmarks(nerve, glide);
        svg.close();
        return svg.document(
                new Words(idPrefix, "Straightened nerve", description()), 0, 0, width, Math.round(bottom + 6));
    }

    private double siteLabels(double top) {
        List<LabelRows.Placed> placed = sitePlaces();
        int rows = LabelRows.rows(placed);
        for (int i = 0; i < placed.size(); i++) {
            double y = top + (rows - 1 - placed.get(i).row()) * ROW + TYPE;
            double x = along.pixel(strip.sites().get(i).position());
            line(x, y + 4, x, top + rows * ROW + 8, palette.accent().hex(), 1);
        }
        for (LabelRows.Placed each : placed) {
            double y = top + (rows - 1 - each.row()) * ROW + TYPE;
            label(each.middle(), y, each.text(), "middle", palette.accent().hex());
        }
        return top + rows * ROW;
    }

    private List<LabelRows.Placed> sitePlaces() {
        return LabelRows.of(
                strip.sites().stream().map(s -> along.pixel(s.position())).toList(),
                strip.sites().stream()
                        .map(s -> s.sure() ? s.label() : s.label() + " " + percent(s.probability()))
                        .toList(),
                TYPE,
                4,
                width - 4.0);
    }

    private static String percent(double probability) {
        return Math.round(100 * probability) + " %";
    }

    /** The strain as an area over its zero line; the y of the nerve under it. */
    private double strain(double top) {
        double most = Math.max(
                reach.strainPct(),
                strip.samples().stream()
                        .mapToDouble(NerveStrip.Sample::strainPercent)
                        .max()
                        .orElse(1));
        double least = Math.min(
                0,
                strip.samples().stream()
                        .mapToDouble(NerveStrip.Sample::strainPercent)
                        .min()
                        .orElse(0));
        Scale up = new Scale(least, most, top + STRAIN_HEIGHT, top);
        double zero = up.pixel(0);
        for (double tick : up.ticks(3)) {
            double y = up.pixel(tick);
            line(
                    LEFT,
                    y,
                    width - RIGHT,
                    y,
                    palette.paper().mixed(palette.soft(), 0.45).hex(),
                    1);
            label(LEFT - 6, y + 4.5, up.text(tick) + " %", "end", palette.soft().hex());
        }
        var area = new StringBuilder("M" + n(along.pixel(strip.samples().get(0).position())) + " " + n(zero));
        var edge = new StringBuilder();
        for (NerveStrip.Sample s : strip.samples()) {
            String point = n(along.pixel(s.position())) + " " + n(up.pixel(s.strainPercent()));
            area.append('L').append(point);
            edge.append(edge.isEmpty() ? 'M' : 'L').append(point);
        }
        double last =
                along.pixel(strip.samples().get(strip.samples().size() - 1).position());
        area.append('L').append(n(last)).append(' ').append(n(zero)).append('z');
        svg.path(
                area.toString(),
                "fill",
                palette.mat().mixed(palette.paper(), 0.3).hex());
        svg.path(edge.toString(), "fill", "none", "stroke", ink(), "stroke-width", "2", "stroke-linejoin", "round");
        line(LEFT, zero, width - RIGHT, zero, palette.soft().hex(), 1);
        return top + STRAIN_HEIGHT + 8;
    }

    private void siteMarks(double top, double nerve) {
        for (NerveStrip.SuspectedSite site : strip.sites()) {
            double x = along.pixel(site.position());
            line(x, top + 8, x, nerve, palette.accent().hex(), 1);
        }
        for (NerveStrip.SuspectedSite site : strip.sites()) {
            // The area of the mark grows with the probability.
            double radius = 3 + 7 * Math.sqrt(site.probability());
            svg.element(
                    "circle",
                    "cx",
                    n(along.pixel(site.position())),
                    "cy",
                    n(nerve + NERVE / 2),
                    "r",
                    n(radius),
                    "fill",
                    palette.paper().hex(),
                    "stroke",
                    palette.accent().hex(),
                    "stroke-width",
                    "2.5");
        }
    }

    /** Arrows whose length is the glide, all to one scale; at even steps so that they do not touch. */
    private double glide(double top) {
        double most = strip.samples().stream()
                .mapToDouble(s -> Math.abs(s.glideMm()))
                .max()
                .orElse(0);
        int arrows = Math.max(4, (width - (int) LEFT) / 58);
        double room = (width - LEFT - RIGHT) / arrows;
        double longest = Math.max(most, reach.glideMm());
        double y = top + 12;
        for (int i = 0; i < arrows; i++) {
            double place = (i + 0.5) / arrows;
            NerveStrip.Sample sample = strip.nearest(place);
            double length = most < 0.05 ? 0 : 0.86 * room * sample.glideMm() / longest;
            if (sample.wayKnown()) {
                arrow(along.pixel(place), y, length);
            } else {
                label(along.pixel(place), y + 4, "?", "middle", palette.soft().hex());
            }
        }
        String largest = (strip.validated() ? "" : "not validated; ")
                + String.format(Locale.ROOT, "glide, largest %.1f mm", most);
        label(
                LEFT,
                top + 12 + 20,
                width < 480 ? largest : largest + arrowWords(),
                "start",
                palette.soft().hex());
        return top + GLIDE_HEIGHT;
    }

    private String arrowWords() {
        return "; arrows point the way it slides" + (strip.someWayUnknown() ? ", ? = which way is not known" : "");
    }

    private void arrow(double middle, double y, double length) {
        if (Math.abs(length) < 3) {
            svg.element(
                    "circle",
                    "cx",
                    n(middle),
                    "cy",
                    n(y),
                    "r",
                    "1.6",
                    "fill",
                    palette.soft().hex());
            return;
        }
        double way = Math.signum(length);
        double tip = middle + length / 2;
        double head = Math.min(8, Math.abs(length) * 0.6);
        line(middle - length / 2, y, tip - way * head * 0.7, y, ink(), 2.2);
        svg.path(
                "M" + n(tip) + " " + n(y) + "L" + n(tip - way * head) + " " + n(y - 0.55 * head) + "V"
                        + n(y + 0.55 * head) + "z",
                "fill",
                ink());
    }

    private static double landmarkY(double top, LabelRows.Placed label) {
        return top + 18 + label.row() * ROW;
    }

    private double landmarks(double nerve, double top) {
        List<LabelRows.Placed> placed = LabelRows.of(
                strip.landmarks().stream().map(l -> along.pixel(l.position())).toList(),
                strip.landmarks().stream().map(NerveStrip.Landmark::label).toList(),
                TYPE,
                4,
                width - 4.0);
        for (int i = 0; i < placed.size(); i++) {
            double x = along.pixel(strip.landmarks().get(i).position());
            line(x, nerve - 3, x, nerve + NERVE + 3, ink(), 1.4);
            line(
                    x,
                    top + 2,
                    x,
                    landmarkY(top, placed.get(i)) - TYPE,
                    palette.soft().hex(),
                    0.8);
        }
        for (LabelRows.Placed each : placed) {
            label(each.middle(), landmarkY(top, each), each.text(), "middle", ink());
        }
        return top + 8 + LabelRows.rows(placed) * ROW;
    }

    private String ink() {
        return palette.words().hex();
    }

    private static String n(double value) {
        return Svg.number(value);
    }

    private void line(double x0, double y0, double x1, double y1, String colour, double wide) {
        svg.element(
                "line", "x1", n(x0), "y1", n(y0), "x2", n(x1), "y2", n(y1), "stroke", colour, "stroke-width", n(wide));
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

    /** The same in words: the largest strain and glide, what happens at each landmark, the sites. */
    private String description() {
        var words = new ArrayList<String>();
        if (!strip.validated()) {
            words.add("Not validated: hardly any measurement is published.");
        }
        NerveStrip.Sample most = strip.samples().get(0);
        for (NerveStrip.Sample s : strip.samples()) {
            most = s.strainPercent() > most.strainPercent() ? s : most;
        }
        words.add(String.format(
                Locale.ROOT,
                "Largest strain %.1f %% at %d %% of the way from the brainstem to the end.",
                most.strainPercent(),
                Math.round(100 * most.position())));
        for (NerveStrip.Landmark l : strip.landmarks()) {
            NerveStrip.Sample s = strip.nearest(l.position());
            String glide = s.wayKnown() ? String.format(Locale.ROOT, "glide %.1f mm", s.glideMm()) : "glide not known";
            words.add(String.format(Locale.ROOT, "At %s: strain %.1f %%, %s.", l.label(), s.strainPercent(), glide));
        }
        for (NerveStrip.SuspectedSite site : strip.sites()) {
            words.add(
                    site.sure()
                            ? "Marked: %s.".formatted(site.label())
                            : "Suspected: %s, %s.".formatted(site.label(), percent(site.probability())));
        }
        return String.join(" ", words);
    }
}
