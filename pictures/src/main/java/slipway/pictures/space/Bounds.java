package slipway.pictures.space;

import java.util.Collection;

/**
 * A rectangle of the picture, fractions of stature, y up.
 *
 * @param left smallest x
 * @param bottom smallest y
 * @param right largest x
 * @param top largest y
 */
public record Bounds(double left, double bottom, double right, double top) {
    public Bounds {
        if (!(left <= right && bottom <= top) || !Double.isFinite(right - left) || !Double.isFinite(top - bottom)) {
            throw new IllegalArgumentException("a rectangle needs left <= right and bottom <= top, was %s..%s, %s..%s"
                    .formatted(left, right, bottom, top));
        }
    }

    /** The smallest rectangle around some points, at least one. */
    public static Bounds around(Collection<P2> points) {
        double left = Double.POSITIVE_INFINITY;
        double bottom = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        for (P2 p : points) {
            left = Math.min(left, p.x());
            right = Math.max(right, p.x());
            bottom = Math.min(bottom, p.y());
            top = Math.max(top, p.y());
        }
        return new Bounds(left, bottom, right, top);
    }

    public Bounds union(Bounds other) {
        return new Bounds(
                Math.min(left, other.left),
                Math.min(bottom, other.bottom),
                Math.max(right, other.right),
                Math.max(top, other.top));
    }

    public Bounds grown(double margin) {
        return new Bounds(left - margin, bottom - margin, right + margin, top + margin);
    }

    public boolean contains(P2 p, double tolerance) {
        return p.x() >= left - tolerance
                && p.x() <= right + tolerance
                && p.y() >= bottom - tolerance
                && p.y() <= top + tolerance;
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return top - bottom;
    }
}
