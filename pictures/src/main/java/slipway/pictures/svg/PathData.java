package slipway.pictures.svg;

import java.util.List;
import slipway.pictures.space.P2;

/** Path data in whole units, relative and without needless characters. y of the input is up, y of the output down. */
public final class PathData {
    /** Units of the picture per stature: one unit is about 2 mm of a person. */
    public static final double UNITS = 800;

    private static final double MOST_HANDLE = 0.42;

    private final StringBuilder text = new StringBuilder();
    private long x;
    private long y;
    private boolean afterNumber;

    /** A smooth closed outline through some points. */
    public static String closedCurve(List<P2> points) {
        return new PathData().curve(points, true);
    }

    /** A smooth line through some points. */
    public static String openCurve(List<P2> points) {
        return new PathData().curve(points, false);
    }

    /** Straight lines through some points, closed. */
    public static String polygon(List<P2> points) {
        return new PathData().lines(points, true);
    }

    /** Straight lines through some points. */
    public static String polyline(List<P2> points) {
        return new PathData().lines(points, false);
    }

    private String curve(List<P2> points, boolean closed) {
        int n = points.size();
        moveTo(points.get(0));
        command('c');
        for (int i = 0; i < (closed ? n : n - 1); i++) {
            P2 p1 = points.get(i);
            P2 p2 = points.get((i + 1) % n);
            P2 p0 = closed ? points.get((i + n - 1) % n) : points.get(Math.max(0, i - 1));
            P2 p3 = closed ? points.get((i + 2) % n) : points.get(Math.min(n - 1, i + 2));
            double most = MOST_HANDLE * p1.distance(p2);
            coordinates(p1.plus(handle(p0, p2, most), 1));
            coordinates(p2.plus(handle(p1, p3, most), -1));
            coordinates(p2);
            moved(p2);
        }
        return ended(closed);
    }

    /** A sixth of the way between the neighbours, but never so long that the curve would swing out. */
    private static P2 handle(P2 before, P2 after, double most) {
        P2 way = after.minus(before);
        double length = way.length() / 6;
        double factor = length > most && length > 0 ? most / length / 6 : 1.0 / 6;
        return new P2(way.x() * factor, way.y() * factor);
    }

    private String lines(List<P2> points, boolean closed) {
        moveTo(points.get(0));
        command('l');
        for (P2 p : points.subList(1, points.size())) {
            coordinates(p);
            moved(p);
        }
        return ended(closed);
    }

    private String ended(boolean closed) {
        return closed ? text.append('z').toString() : text.toString();
    }

    private void moveTo(P2 p) {
        command('M');
        coordinates(p);
        moved(p);
    }

    private void command(char c) {
        text.append(c);
        afterNumber = false;
    }

    private void coordinates(P2 p) {
        number(units(p.x()) - x);
        number(units(-p.y()) - y);
    }

    private void moved(P2 p) {
        x = units(p.x());
        y = units(-p.y());
    }

    private void number(long n) {
        if (afterNumber && n >= 0) {
            text.append(' ');
        }
        text.append(n);
        afterNumber = true;
    }

    /** A length in units of the picture. */
    public static long units(double statures) {
        return Math.round(statures * UNITS);
    }
}
