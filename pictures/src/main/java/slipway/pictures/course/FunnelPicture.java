package slipway.pictures.course;

import static slipway.pictures.course.Ground.n;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import slipway.pictures.chart.Scale;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.Words;

/**
 * Shares of groups over their sizes, with limits within which chance alone puts them. Points have no names: the picture says
 * whether groups differ by more than chance, not who is first.
 */
public final class FunnelPicture {
    private static final double LEFT = 48;
    private static final double SIDE = 14;
    private static final double TOP = 30;
    private static final double HIGH = 220;
    private static final double POINT = 5;

    private final Ground ground;
    private final Funnel funnel;
    private final Scale across;
    private final Scale up = new Scale(0, 1, TOP + HIGH, TOP);

    /** Limits at a size, as shares. */
    public record Limit(int people, double alarmLow, double warnLow, double warnHigh, double alarmHigh) {}

    /** A group. */
    public record Point(int better, int people, boolean outside) {}

    /**
     * What is drawn.
     *
     * @param target share of all groups together
     * @param limits at least two, by size
     */
    public record Funnel(double target, List<Limit> limits, List<Point> points) {
        public Funnel {
            limits = List.copyOf(limits);
            points = List.copyOf(points);
            if (!(target > 0 && target < 1) || limits.size() < 2) {
                throw new IllegalArgumentException("a funnel needs a target within 0 and 1 and two limits, was %s, %d"
                        .formatted(target, limits.size()));
            }
        }
    }

    private FunnelPicture(Funnel funnel, Palette palette, int width) {
        this.funnel = funnel;
        this.ground = new Ground(palette);
        List<Limit> limits = funnel.limits();
        this.across = new Scale(0, limits.get(limits.size() - 1).people(), LEFT, width - SIDE);
    }

    /**
     * The funnel as SVG.
     *
     * @param width in px, 240 to 2000
     */
    public static String svg(Funnel funnel, Palette palette, int width, String idPrefix) {
        if (width < 240 || width > 2000) {
            throw new IllegalArgumentException("the width of a funnel must be within 240 and 2000 px, was " + width);
        }
        return new FunnelPicture(funnel, palette, width).draw(width, idPrefix);
    }

    private String draw(int width, String idPrefix) {
        double height = TOP + HIGH + 3 * Ground.ROW + 12;
        ground.rect(0, 0, width, height, ground.paper());
        ground.area(band(Limit::alarmLow, Limit::alarmHigh), ground.area(false));
        ground.area(band(Limit::warnLow, Limit::warnHigh), ground.area(true));
        axes();
        double y = up.pixel(funnel.target());
        ground.line(across.firstPixel(), y, across.lastPixel(), y, ground.ink(), 1.2, "5 4");
        funnel.points().forEach(this::point);
        ground.svg().close();
        return ground.svg().document(new Words(idPrefix, "Funnel", words()), 0, 0, width, Math.round(height));
    }

    private String band(ToDoubleFunction<Limit> low, ToDoubleFunction<Limit> high) {
        var data = new StringBuilder();
        List<Limit> limits = funnel.limits();
        limits.forEach(each -> data.append(data.isEmpty() ? 'M' : 'L').append(at(each, high)));
        for (int i = limits.size() - 1; i >= 0; i--) {
            data.append('L').append(at(limits.get(i), low));
        }
        return data.append('z').toString();
    }

    private String at(Limit limit, ToDoubleFunction<Limit> share) {
        return n(across.pixel(limit.people())) + " " + n(up.pixel(share.applyAsDouble(limit)));
    }

    private void axes() {
        ground.plain(SIDE, Ground.TYPE + 3, "better by more than error", "start", ground.soft());
        for (double share : List.of(0.0, 0.25, 0.5, 0.75, 1.0)) {
            ground.line(LEFT - 5, up.pixel(share), LEFT, up.pixel(share), ground.soft(), 1, "");
            ground.plain(LEFT - 8, up.pixel(share) + 4, Math.round(100 * share) + " %", "end", ground.soft());
        }
        double bottom = TOP + HIGH;
        ground.line(LEFT, bottom, across.lastPixel(), bottom, ground.soft(), 1, "");
        for (double people : across.ticks(6)) {
            double x = across.pixel(people);
            ground.line(x, bottom, x, bottom + 5, ground.soft(), 1, "");
            ground.plain(x, bottom + 6 + Ground.TYPE, across.text(people), "middle", ground.soft());
        }
        double y = bottom + 6 + Ground.ROW + Ground.TYPE;
        ground.plain(across.lastPixel(), y, "people of the group", "end", ground.soft());
        ground.plain(LEFT, y + Ground.ROW, "dashed: all together", "start", ground.soft());
    }

    private void point(Point point) {
        double x = across.pixel(point.people());
        double y = up.pixel((double) point.better() / point.people());
        if (point.outside()) {
            ground.mark(Marks.diamond(x, y, 1.4 * POINT), ground.accent(), ground.paper());
        } else {
            ground.mark(Marks.circle(x, y, POINT), ground.ink(), ground.paper());
        }
    }

    private String words() {
        var parts = new ArrayList<String>();
        parts.add("All together: %d %% better by more than error.".formatted(Math.round(100 * funnel.target())));
        funnel.points()
                .forEach(point -> parts.add("A group: %d of %d better, %s."
                        .formatted(point.better(), point.people(), point.outside() ? "outside" : "within")));
        return String.join(" ", parts);
    }
}
