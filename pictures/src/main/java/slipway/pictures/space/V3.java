package slipway.pictures.space;

/**
 * A point or direction in the room: x to the right of the picture seen from the side, y away from the viewer, z up.
 * Lengths are fractions of stature.
 */
public record V3(double x, double y, double z) {
    public static final V3 ZERO = new V3(0, 0, 0);
    public static final V3 X = new V3(1, 0, 0);
    public static final V3 Y = new V3(0, 1, 0);
    public static final V3 Z = new V3(0, 0, 1);

    public V3 plus(V3 v) {
        return new V3(x + v.x, y + v.y, z + v.z);
    }

    /** This point moved along a direction. */
    public V3 plus(V3 direction, double length) {
        return new V3(x + direction.x * length, y + direction.y * length, z + direction.z * length);
    }

    public V3 minus(V3 v) {
        return new V3(x - v.x, y - v.y, z - v.z);
    }

    public V3 times(double factor) {
        return new V3(x * factor, y * factor, z * factor);
    }

    public double dot(V3 v) {
        return x * v.x + y * v.y + z * v.z;
    }

    public V3 cross(V3 v) {
        return new V3(y * v.z - z * v.y, z * v.x - x * v.z, x * v.y - y * v.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    public double distance(V3 v) {
        return minus(v).length();
    }

    /** The direction of this vector; of a vector without length, the fallback. */
    public V3 unitOr(V3 fallback) {
        double length = length();
        return length < 1e-9 ? fallback : times(1 / length);
    }

    /** The point part of the way to another one. */
    public V3 towards(V3 end, double fraction) {
        return plus(end.minus(this), fraction);
    }

    /** This direction turned by an angle towards another one at a right angle to it. */
    public V3 turned(V3 towards, double angleRad) {
        return times(Math.cos(angleRad)).plus(towards, Math.sin(angleRad));
    }

    /** The part of this vector at a right angle to a direction of length 1. */
    public V3 across(V3 direction) {
        return minus(direction.times(dot(direction)));
    }
}
