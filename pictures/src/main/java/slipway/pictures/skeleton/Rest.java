package slipway.pictures.skeleton;

import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Support;

/**
 * Rests a body on what carries it. The joint angles of the posture are kept except where the body would float over or
 * sink into the floor: there the nearest joint gives way.
 */
public final class Rest {
    private Rest() {}

    /** The body of a posture on its support. Pure; cost about 0.1 ms. */
    public static Resting of(Support support, Posture posture, Ground ground) {
        BodyAngles angles = BodyAngles.of(posture);
        return switch (support) {
            case LYING -> Recline.faceUp(angles, ground);
            case SIDE_LYING -> Recline.sideways(angles, ground);
            case PRONE -> Recline.faceDown(angles, ground);
            case LONG_SITTING -> Recline.longSitting(angles, ground);
            case SITTING -> Upright.sitting(angles, ground);
            case STANDING -> Upright.standing(angles);
            case KNEELING, ALL_FOURS -> Upright.kneeling(support, angles, ground);
        };
    }
}
