package slipway.pictures.space;

/** A point of the picture: x to the right, y up. Lengths are fractions of stature. */
public record P2(double x, double y) {
    public P2 plus(P2 direction, double length) {
        return new P2(x + direction.x * length, y + direction.y * length);
    }

    public P2 minus(P2 p) {
        return new P2(x - p.x, y - p.y);
    }

    public double length() {
        return Math.hypot(x, y);
    }

    public double distance(P2 p) {
        return Math.hypot(x - p.x, y - p.y);
    }

    /** The point part of the way to another one. */
    public P2 towards(P2 end, double fraction) {
        return new P2(x + (end.x - x) * fraction, y + (end.y - y) * fraction);
    }
}
