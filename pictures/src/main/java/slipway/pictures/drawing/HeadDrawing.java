package slipway.pictures.drawing;

import java.util.ArrayList;
import java.util.List;
import slipway.pictures.look.Look;
import slipway.pictures.skeleton.Skeleton;
import slipway.pictures.space.Frame;
import slipway.pictures.space.P2;
import slipway.pictures.space.V3;
import slipway.pictures.svg.PathData;
import slipway.pictures.svg.Svg;

/** A calm head: from the side, from the front, from behind or from above, whichever the camera sees most of. */
final class HeadDrawing {
    private static final double[][] PROFILE = {
        {-0.004, 0.0645},
        {0.026, 0.058},
        {0.043, 0.042},
        {0.0485, 0.024},
        {0.0478, 0.012},
        {0.0530, 0.001},
        {0.0605, -0.0125},
        {0.0570, -0.0175},
        {0.0505, -0.0195},
        {0.0525, -0.0275},
        {0.0500, -0.0325},
        {0.0515, -0.0385},
        {0.0475, -0.0445},
        {0.0485, -0.0530},
        {0.0430, -0.0625},
        {0.0330, -0.0645},
        {0.0120, -0.0560},
        {-0.006, -0.048},
        {-0.028, -0.044},
        {-0.048, -0.030},
        {-0.0585, -0.004},
        {-0.057, 0.024},
        {-0.043, 0.049},
        {-0.024, 0.061}
    };
    private static final double[][] PROFILE_HAIR = {
        {0.000, 0.0685},
        {0.028, 0.0625},
        {0.0445, 0.047},
        {0.0455, 0.038},
        {0.033, 0.0365},
        {0.018, 0.030},
        {0.0105, 0.016},
        {0.0095, -0.001},
        {0.0045, -0.006},
        {-0.002, 0.008},
        {-0.0135, 0.012},
        {-0.0195, 0.000},
        {-0.0185, -0.018},
        {-0.024, -0.034},
        {-0.036, -0.044},
        {-0.052, -0.033},
        {-0.0630, -0.004},
        {-0.0610, 0.026},
        {-0.0465, 0.052},
        {-0.026, 0.065}
    };
    private static final double[][] EAR = {
        {-0.003, 0.007}, {-0.0095, 0.0095}, {-0.0145, 0.004}, {-0.0125, -0.006}, {-0.0085, -0.013}, {-0.004, -0.009}
    };
    private static final double[][] FACE = {
        {0, 0.065},
        {0.028, 0.058},
        {0.043, 0.034},
        {0.0455, 0.006},
        {0.042, -0.022},
        {0.030, -0.050},
        {0.013, -0.0635},
        {-0.013, -0.0635},
        {-0.030, -0.050},
        {-0.042, -0.022},
        {-0.0455, 0.006},
        {-0.043, 0.034},
        {-0.028, 0.058}
    };
    private static final double[][] FACE_HAIR = {
        {0, 0.0695},
        {0.031, 0.0625},
        {0.047, 0.038},
        {0.0485, 0.010},
        {0.0435, 0.002},
        {0.0395, 0.024},
        {0.026, 0.037},
        {0.004, 0.041},
        {-0.020, 0.037},
        {-0.0385, 0.026},
        {-0.0435, 0.002},
        {-0.0485, 0.010},
        {-0.047, 0.038},
        {-0.031, 0.0625}
    };
    private static final double[][] BACK_HAIR = {
        {0, 0.0695},
        {0.031, 0.0625},
        {0.047, 0.038},
        {0.0485, 0.006},
        {0.041, -0.026},
        {0.026, -0.043},
        {0, -0.047},
        {-0.026, -0.043},
        {-0.041, -0.026},
        {-0.0485, 0.006},
        {-0.047, 0.038},
        {-0.031, 0.0625}
    };
    private static final double[][] CROWN_HAIR = {
        {0, 0.050},
        {0.030, 0.042},
        {0.046, 0.014},
        {0.045, -0.020},
        {0.030, -0.050},
        {0, -0.061},
        {-0.030, -0.050},
        {-0.045, -0.020},
        {-0.046, 0.014},
        {-0.030, 0.042}
    };
    private static final double[][] CROWN_FACE = {
        {0, 0.060},
        {0.010, 0.054},
        {0.032, 0.046},
        {0.046, 0.018},
        {0.030, -0.030},
        {0, -0.05},
        {-0.030, -0.030},
        {-0.046, 0.018},
        {-0.032, 0.046},
        {-0.010, 0.054}
    };
    private static final double LEAST_LENGTH = 0.86;

    private final Pen pen;
    private final P2 centre;
    private final P2 front;
    private final P2 out;
    private final P2 up;
    private final Aspect aspect;

    private enum Aspect {
        PROFILE,
        FACE,
        BACK,
        CROWN
    }

    HeadDrawing(Pen pen, Skeleton bones) {
        this.pen = pen;
        Frame head = bones.head();
        this.centre = pen.camera().project(bones.headCentre());
        this.front = softened(head.front());
        this.out = softened(head.out());
        this.up = softened(head.up());
        this.aspect = aspect(head, pen.camera().towards());
    }

    private static Aspect aspect(Frame head, V3 viewer) {
        double f = head.front().dot(viewer);
        double o = Math.abs(head.out().dot(viewer));
        double u = Math.abs(head.up().dot(viewer));
        if (o >= Math.abs(f) && o >= u) {
            return Aspect.PROFILE;
        }
        // A bowed head still shows its face or its back for a while before only hair is seen.
        if (0.8 * u > Math.abs(f)) {
            return Aspect.CROWN;
        }
        return f > 0 ? Aspect.FACE : Aspect.BACK;
    }

    /** A head is as deep as it is high: seen at a slant it does not get as flat as a drawing would. */
    private P2 softened(V3 axis) {
        P2 seen = pen.camera().direction(axis);
        double length = seen.length();
        double factor = length < 1e-6 ? 1 : Math.max(1, LEAST_LENGTH / length);
        return new P2(seen.x() * factor, seen.y() * factor);
    }

    /** The outline of skin and hair, to be stroked before anything of the group is filled. */
    List<String> outlines() {
        var paths = new ArrayList<String>();
        switch (aspect) {
            case PROFILE -> paths.addAll(List.of(across(PROFILE), across(PROFILE_HAIR)));
            case FACE -> paths.addAll(List.of(facing(FACE), facing(FACE_HAIR)));
            case BACK -> paths.add(facing(BACK_HAIR));
            case CROWN -> paths.addAll(List.of(above(CROWN_FACE), above(CROWN_HAIR)));
        }
        if (pen.look().cut() == Look.Cut.TIED && aspect != Aspect.FACE) {
            paths.add(knot());
        }
        return paths;
    }

    void fill() {
        if (pen.look().cut() == Look.Cut.TIED && aspect != Aspect.FACE) {
            pen.fills(List.of(knot()), pen.look().hair());
        }
        switch (aspect) {
            case PROFILE -> profile();
            case FACE -> face();
            case BACK -> pen.fills(List.of(facing(BACK_HAIR)), pen.look().hair());
            case CROWN -> {
                pen.fills(List.of(above(CROWN_FACE)), pen.look().skin());
                pen.fills(List.of(above(CROWN_HAIR)), pen.look().hair());
            }
        }
    }

    private void profile() {
        pen.fills(List.of(across(PROFILE)), pen.look().skin());
        pen.fills(List.of(across(PROFILE_HAIR)), pen.look().hair());
        pen.fills(List.of(across(EAR)), pen.look().skin());
        features(
                List.of(
                        line(front, new double[][] {{0.0335, 0.0155}, {0.0385, 0.0175}, {0.0425, 0.016}}),
                        line(front, new double[][] {{0.0415, -0.0325}, {0.0465, -0.0335}, {0.0500, -0.0325}}),
                        line(front, new double[][] {{-0.0045, 0.004}, {-0.0095, 0.005}, {-0.010, -0.003}})),
                List.of(place(front, 0.0370, 0.0055)));
    }

    private void face() {
        pen.fills(List.of(facing(FACE)), pen.look().skin());
        pen.fills(List.of(facing(FACE_HAIR)), pen.look().hair());
        features(
                List.of(
                        line(out, new double[][] {{0.010, 0.0165}, {0.0175, 0.0190}, {0.0245, 0.0165}}),
                        line(out, new double[][] {{-0.010, 0.0165}, {-0.0175, 0.0190}, {-0.0245, 0.0165}}),
                        line(out, new double[][] {{0.0005, 0.001}, {0.005, -0.0165}, {-0.003, -0.0185}}),
                        line(out, new double[][] {{-0.0125, -0.0335}, {0, -0.0380}, {0.0125, -0.0335}})),
                List.of(place(out, 0.0175, 0.006), place(out, -0.0175, 0.006)));
    }

    private void features(List<String> lines, List<P2> eyes) {
        Svg svg = pen.svg();
        String ink = pen.look().palette().ink().hex();
        svg.open("fill", "none", "stroke", ink, "stroke-width", "3", "stroke-linecap", "round");
        lines.forEach(d -> svg.path(d));
        svg.close();
        for (P2 eye : eyes) {
            svg.element(
                    "circle",
                    "cx",
                    Long.toString(PathData.units(eye.x())),
                    "cy",
                    Long.toString(PathData.units(-eye.y())),
                    "r",
                    "3.4",
                    "fill",
                    ink);
        }
    }

    private String knot() {
        var points = new ArrayList<P2>();
        for (int k = 0; k < 8; k++) {
            double a = -Math.PI * k / 4;
            points.add(centre.plus(front, -0.064 + 0.020 * Math.cos(a)).plus(up, 0.022 + 0.020 * Math.sin(a)));
        }
        return PathData.closedCurve(points);
    }

    private P2 place(P2 level, double along, double upwards) {
        return centre.plus(level, along).plus(up, upwards);
    }

    private String line(P2 level, double[][] shape) {
        var points = new ArrayList<P2>();
        for (double[] p : shape) {
            points.add(place(level, p[0], p[1]));
        }
        return PathData.openCurve(points);
    }

    private String across(double[][] shape) {
        return drawn(shape, front, up);
    }

    private String facing(double[][] shape) {
        return drawn(shape, out, up);
    }

    private String above(double[][] shape) {
        return drawn(shape, out, front);
    }

    private String drawn(double[][] shape, P2 first, P2 second) {
        var points = new ArrayList<P2>();
        for (double[] p : shape) {
            points.add(centre.plus(first, p[0]).plus(second, p[1]));
        }
        return PathData.closedCurve(points);
    }
}
