package slipway.pictures.nerve;

import java.util.ArrayList;
import java.util.List;
import slipway.pictures.chart.LabelRows;
import slipway.pictures.chart.Scale;
import slipway.pictures.look.Palette;
import slipway.pictures.nerve.NerveStrip.Landmark;
import slipway.pictures.nerve.NerveStrip.SuspectedSite;
import slipway.pictures.svg.Svg;
import slipway.pictures.svg.Words;

/** Draws the nerve as a straight strip with a stem at each suspected place, as tall as the place is likely. */
public final class SuspectedPlaces {
    private static final double TYPE = 14;
    private static final double ROW = 19;
    private static final double EDGE = 24;
    private static final double TALLEST = 90;
    private static final double NERVE = 10;

    /** Places nearer to each other than this share of the nerve get one stem. */
    private static final double TOGETHER = 0.012;

    private final List<Landmark> landmarks;
    private final List<SuspectedSite> stems;
    private final Palette palette;
    private final int width;
    private final Scale along;
    private final Svg svg = new Svg();

    private SuspectedPlaces(List<Landmark> landmarks, List<SuspectedSite> sites, Palette palette, int width) {
        this.landmarks = landmarks;
        this.stems = joined(sites);
        this.palette = palette;
        this.width = width;
        this.along = new Scale(0, 1, EDGE, width - EDGE);
    }

    /**
     * The picture as SVG.
     *
     * @param sites rising in position
     * @param width in px
     */
    public static String svg(
            List<Landmark> landmarks, List<SuspectedSite> sites, Palette palette, int width, Words words) {
        return new SuspectedPlaces(landmarks, sites, palette, width).draw(words);
    }

    private static List<SuspectedSite> joined(List<SuspectedSite> sites) {
        var stems = new ArrayList<SuspectedSite>();
        for (SuspectedSite site : sites) {
            int last = stems.size() - 1;
            if (last >= 0 && site.position() - stems.get(last).position() < TOGETHER) {
                SuspectedSite other = stems.get(last);
                stems.set(
                        last,
                        new SuspectedSite(
                                other.position(),
                                Math.min(1, other.probability() + site.probability()),
                                other.label() + ", " + site.label()));
            } else {
                stems.add(site);
            }
        }
        return stems;
    }

    private String draw(Words words) {
        svg.open("font-family", "DejaVu Sans, sans-serif", "font-size", Svg.number(TYPE));
        List<LabelRows.Placed> labels = LabelRows.of(
                stems.stream().map(stem -> along.pixel(stem.position())).toList(),
                stems.stream()
                        .map(stem -> stem.label() + " " + Math.round(100 * stem.probability()) + " %")
                        .toList(),
                TYPE,
                4,
                width - 4.0);
        double top = 6 + LabelRows.rows(labels) * ROW;
        double nerve = top + 10 + TALLEST;
        String accent = palette.accent().hex();
        for (SuspectedSite stem : stems) {
            double x = along.pixel(stem.position());
            double y = nerve - TALLEST * stem.probability();
            line(x, top, x, y, palette.soft().hex(), 0.8);
            line(x, y, x, nerve, accent, 7);
        }
        for (int i = 0; i < labels.size(); i++) {
            double y = 6 + (LabelRows.rows(labels) - 1 - labels.get(i).row()) * ROW + TYPE;
            text(labels.get(i).middle(), y, labels.get(i).text(), accent);
        }
        svg.element(
                "rect",
                "x",
                Svg.number(EDGE),
                "y",
                Svg.number(nerve),
                "width",
                Svg.number(width - 2 * EDGE),
                "height",
                Svg.number(NERVE),
                "rx",
                "5",
                "fill",
                palette.mat().hex(),
                "stroke",
                palette.words().hex(),
                "stroke-width",
                "1.2");
        double bottom = landmarks(nerve + NERVE);
        svg.close();
        return svg.document(words, 0, 0, width, Math.round(bottom + 8));
    }

    private double landmarks(double top) {
        List<LabelRows.Placed> labels = LabelRows.of(
                landmarks.stream().map(each -> along.pixel(each.position())).toList(),
                landmarks.stream().map(Landmark::label).toList(),
                TYPE,
                4,
                width - 4.0);
        for (int i = 0; i < labels.size(); i++) {
            double x = along.pixel(landmarks.get(i).position());
            double y = top + 10 + labels.get(i).row() * ROW + TYPE;
            line(x, top - NERVE, x, y - TYPE, palette.soft().hex(), 0.8);
            text(
                    labels.get(i).middle(),
                    y,
                    labels.get(i).text(),
                    palette.words().hex());
        }
        return top + 10 + LabelRows.rows(labels) * ROW;
    }

    private void line(double x0, double y0, double x1, double y1, String colour, double wide) {
        svg.element(
                "line",
                "x1",
                Svg.number(x0),
                "y1",
                Svg.number(y0),
                "x2",
                Svg.number(x1),
                "y2",
                Svg.number(y1),
                "stroke",
                colour,
                "stroke-width",
                Svg.number(wide));
    }

    private void text(double x, double y, String content, String colour) {
        svg.text(content, "x", Svg.number(x), "y", Svg.number(y), "text-anchor", "middle", "fill", colour);
    }
}
