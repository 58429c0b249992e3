package slipway.pictures.figure;

import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Support;

/**
 * A posture on what carries it, with what the hands do.
 *
 * @param support what carries the body
 * @param posture joint angles
 * @param arms where the hands are
 */
public record Pose(Support support, Posture posture, Arms arms) {
    /** A pose with the arms along the sides. */
    public static Pose of(Support support, Posture posture) {
        return new Pose(support, posture, Arms.ALONG_SIDES);
    }
}
