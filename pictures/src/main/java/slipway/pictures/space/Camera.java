package slipway.pictures.space;

/**
 * A parallel projection of the room.
 *
 * @param right the direction that is to the right in the picture
 * @param up the direction that is up in the picture
 * @param towards the direction to the viewer
 * @param centre the point that appears at the origin of the picture
 */
public record Camera(V3 right, V3 up, V3 towards, V3 centre) {

    /** A camera that looks along y and is raised by an angle. */
    public static Camera raised(double angleRad) {
        V3 viewer = V3.Y.times(-1);
        return new Camera(V3.X, V3.Z.turned(V3.Y, angleRad), viewer.turned(V3.Z, angleRad), V3.ZERO);
    }

    /** A camera that looks at what faces to the right of the side view. */
    public static Camera facing() {
        return new Camera(V3.Y, V3.Z, V3.X, V3.ZERO);
    }

    /** The same camera in a mirror: left and right of the picture change places. */
    public Camera mirrored() {
        return new Camera(right.times(-1), up, towards, centre);
    }

    /** The same view with another point in the middle. */
    public Camera centredOn(V3 point) {
        return new Camera(right, up, towards, point);
    }

    public P2 project(V3 v) {
        return direction(v.minus(centre));
    }

    /** A direction as it appears in the picture; shorter than in the room where it points to or from the viewer. */
    public P2 direction(V3 v) {
        return new P2(v.dot(right), v.dot(up));
    }

    /** The direction in the room that appears as a direction of the picture. */
    public V3 inRoom(double pictureX, double pictureY) {
        return right.times(pictureX).plus(up, pictureY);
    }

    /** How near to the viewer a point is; more is nearer. */
    public double nearness(V3 v) {
        return v.dot(towards);
    }
}
