package slipway.pictures.course;

import static slipway.pictures.course.Ground.n;

import java.util.OptionalDouble;
import slipway.pictures.course.CourseStory.Response;

/** Marks of sessions: shape by response, size by settle time; a hollow one where no settle time was reported. */
final class Marks {
    private static final double SMALL = 3.2;
    private static final double LARGE = 8;
    private static final double LONG_SETTLE_MINUTES = 60;

    private Marks() {}

    /** Radius for a settle time: by area, up to an hour. */
    static double radius(OptionalDouble settleMinutes) {
        double share = Math.min(1, Math.max(0, settleMinutes.orElse(0) / LONG_SETTLE_MINUTES));
        return SMALL + (LARGE - SMALL) * Math.sqrt(share);
    }

    static void session(Ground ground, double x, double y, Response response, OptionalDouble settleMinutes) {
        double r = radius(settleMinutes);
        boolean bad = response == Response.FLARE || response == Response.STOPPED;
        String colour = bad ? ground.accent() : ground.ink();
        String fill = settleMinutes.isPresent() ? colour : ground.paper();
        ground.mark(shape(response, x, y, r), fill, settleMinutes.isPresent() ? ground.paper() : colour);
    }

    private static String shape(Response response, double x, double y, double r) {
        return switch (response) {
            case GOOD -> circle(x, y, r);
            case MIXED ->
                "M" + n(x - 0.9 * r) + " " + n(y - 0.9 * r) + "h" + n(1.8 * r) + "v" + n(1.8 * r) + "h" + n(-1.8 * r)
                        + "z";
            case FLARE ->
                "M" + n(x) + " " + n(y - 1.25 * r) + "l" + n(1.2 * r) + " " + n(2.1 * r) + "h" + n(-2.4 * r) + "z";
            case STOPPED -> cross(x, y, r);
        };
    }

    static String circle(double x, double y, double radius) {
        // Half and whole must agree to the printed digit, or the arcs do not meet in a circle.
        double r = Math.rint(radius * 10) / 10;
        return "M" + n(x - r) + " " + n(y) + "a" + n(r) + " " + n(r) + " 0 1 0 " + n(2 * r) + " 0a" + n(r) + " " + n(r)
                + " 0 1 0 " + n(-2 * r) + " 0z";
    }

    static String diamond(double x, double y, double r) {
        return "M" + n(x) + " " + n(y - r) + "l" + n(r) + " " + n(r) + "l" + n(-r) + " " + n(r) + "l" + n(-r) + " "
                + n(-r) + "z";
    }

    private static String cross(double x, double y, double r) {
        double a = 0.45 * r;
        double b = 1.1 * r;
        return "M" + n(x - a) + " " + n(y - b) + "h" + n(2 * a) + "v" + n(b - a) + "h" + n(b - a) + "v" + n(2 * a) + "h"
                + n(a - b) + "v" + n(b - a) + "h" + n(-2 * a) + "v" + n(a - b) + "h" + n(a - b) + "v" + n(-2 * a) + "h"
                + n(b - a) + "z";
    }
}
