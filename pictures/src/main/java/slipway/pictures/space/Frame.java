package slipway.pictures.space;

/**
 * The directions of a body part: to its front, outwards (for the trunk: towards the own side) and up (towards the head).
 * Each has length 1 and they stand at right angles.
 */
public record Frame(V3 front, V3 out, V3 up) {

    /** A body that stands upright, faces to the right of the picture and turns its own side to the viewer. */
    public static Frame standing() {
        return new Frame(V3.X, V3.Y.times(-1), V3.Z);
    }

    /** Turned so that the head end goes forward; hip, spine and neck flexion seen from above the joint. */
    public Frame pitched(double angleRad) {
        return new Frame(front.turned(up.times(-1), angleRad), out, up.turned(front, angleRad));
    }

    /** Turned so that the head end goes outwards. */
    public Frame leaned(double angleRad) {
        return new Frame(front, out.turned(up.times(-1), angleRad), up.turned(out, angleRad));
    }

    /** Turned about the long axis so that the front goes outwards. */
    public Frame twisted(double angleRad) {
        return new Frame(front.turned(out, angleRad), out.turned(front.times(-1), angleRad), up);
    }

    /** The same part seen from the other side of the body: outwards points the other way. */
    public Frame otherSide() {
        return new Frame(front, out.times(-1), up);
    }

    public V3 down() {
        return up.times(-1);
    }

    /** A place given along the three directions. */
    public V3 at(V3 origin, double alongFront, double alongOut, double alongUp) {
        return origin.plus(front, alongFront).plus(out, alongOut).plus(up, alongUp);
    }
}
