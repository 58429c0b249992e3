package slipway.pictures.course;

import static slipway.pictures.course.Ground.n;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import slipway.pictures.chart.LabelRows;
import slipway.pictures.chart.Scale;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.Words;

/**
 * Changes of several measures on one scale: 1 is the least change that is more than the error of its measure. Right is
 * better. The middle between -1 and 1 is shaded: within error.
 */
public final class ChangeForest {
    private static final double ROW_HEIGHT = 40;
    private static final double SIDE = 14;

    private ChangeForest() {}

    /**
     * One change in units of the least detectable change.
     *
     * @param gain positive if better
     * @param error half of the interval around it
     * @param important where people begin to call it important, if that is known
     * @param words the change as numbers, for example {@code 14 to 6, important}
     */
    public record Row(String name, double gain, double error, OptionalDouble important, String words) {
        public Row {
            if (name.isBlank() || !Double.isFinite(gain) || !(error >= 0)) {
                throw new IllegalArgumentException(
                        "a change needs a name, a finite gain and an error from 0 on, was \"%s\", %s, %s"
                                .formatted(name, gain, error));
            }
        }
    }

    /**
     * The forest as SVG.
     *
     * @param width in px, 240 to 2000
     */
    public static String svg(List<Row> rows, Palette palette, int width, String idPrefix) {
        if (width < 240 || width > 2000) {
            throw new IllegalArgumentException("the width of a forest must be within 240 and 2000 px, was " + width);
        }
        var ground = new Ground(palette);
        double bottom = 8 + Math.max(1, rows.size()) * ROW_HEIGHT;
        double height = bottom + 3 * Ground.ROW + 14;
        ground.rect(0, 0, width, height, ground.paper());
        if (rows.isEmpty()) {
            ground.plain(SIDE, 30, "Nothing was measured twice yet.", "start", ground.soft());
        } else {
            draw(ground, rows, width, bottom);
        }
        ground.svg().close();
        return ground.svg().document(new Words(idPrefix, "Changes", words(rows)), 0, 0, width, Math.round(height));
    }

    private static void draw(Ground ground, List<Row> rows, int width, double bottom) {
        double reach = rows.stream()
                .flatMapToDouble(row -> DoubleStream.of(
                        Math.abs(row.gain()) + row.error(), row.important().orElse(0)))
                .max()
                .orElse(1);
        double end = Math.max(1.5, reach * 1.05);
        var scale = new Scale(-end, end, SIDE, width - SIDE);
        ground.rect(scale.pixel(-1), 8, scale.pixel(1) - scale.pixel(-1), bottom - 8, ground.area(false));
        ground.line(scale.pixel(0), 8, scale.pixel(0), bottom, ground.soft(), 1, "");
        axis(ground, scale, bottom);
        for (int i = 0; i < rows.size(); i++) {
            row(ground, scale, rows.get(i), 8 + i * ROW_HEIGHT);
        }
    }

    private static void axis(Ground ground, Scale scale, double bottom) {
        for (double tick : scale.ticks(6)) {
            double x = scale.pixel(tick);
            ground.line(x, bottom, x, bottom + 5, ground.soft(), 1, "");
            ground.plain(x, bottom + 6 + Ground.TYPE, scale.text(tick), "middle", ground.soft());
        }
        double y = bottom + 6 + Ground.ROW + Ground.TYPE;
        ground.plain(scale.firstPixel(), y, "worse", "start", ground.soft());
        ground.plain(scale.lastPixel(), y, "better", "end", ground.soft());
        ground.plain(scale.pixel(0), y, "shaded: within error", "middle", ground.soft());
        ground.mark(important(scale.firstPixel() + 5, y + Ground.ROW - 3), ground.accent(), ground.paper());
        ground.plain(scale.firstPixel() + 16, y + Ground.ROW, "from here on important", "start", ground.soft());
    }

    private static void row(Ground ground, Scale scale, Row row, double top) {
        ground.plain(
                scale.firstPixel(),
                top + Ground.TYPE,
                label(row, scale.lastPixel() - scale.firstPixel()),
                "start",
                ground.ink());
        double y = top + Ground.TYPE + 13;
        double low = scale.pixel(row.gain() - row.error());
        double high = scale.pixel(row.gain() + row.error());
        ground.line(low, y, high, y, ground.ink(), 1.5, "");
        ground.line(low, y - 4, low, y + 4, ground.ink(), 1.5, "");
        ground.line(high, y - 4, high, y + 4, ground.ink(), 1.5, "");
        row.important().ifPresent(at -> {
            ground.mark(important(scale.pixel(at), y - 2), ground.accent(), ground.paper());
        });
        ground.mark(Marks.circle(scale.pixel(row.gain()), y, 4.5), ground.ink(), ground.paper());
    }

    private static String important(double x, double y) {
        return "M" + n(x - 5) + " " + n(y - 7) + "h10l-5 7z";
    }

    /** The name is shortened, not the numbers. */
    private static String label(Row row, double room) {
        if (row.words().isBlank()) {
            return fitted(row.name(), room);
        }
        double left = room - LabelRows.widthOf(": " + row.words(), Ground.TYPE);
        return left < 80 ? fitted(row.words(), room) : fitted(row.name(), left) + ": " + row.words();
    }

    private static String fitted(String text, double room) {
        return LabelRows.of(List.of(0.0), List.of(text), Ground.TYPE, 0, room)
                .get(0)
                .text();
    }

    private static String words(List<Row> rows) {
        if (rows.isEmpty()) {
            return "Nothing was measured twice yet.";
        }
        var parts = new ArrayList<String>();
        parts.add("Changes in units of the least that is more than error.");
        rows.forEach(row -> parts.add("%s: %s (%s to %s)%s."
                .formatted(
                        row.name(),
                        signed(row.gain()),
                        signed(row.gain() - row.error()),
                        signed(row.gain() + row.error()),
                        row.words().isBlank() ? "" : ", " + row.words())));
        return String.join(" ", parts);
    }

    private static String signed(double gain) {
        String text = n(gain);
        return gain > 0 && !"0".equals(text) ? "+" + text : text;
    }
}
