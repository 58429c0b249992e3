package slipway.pictures.skeleton;

import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/**
 * The joints of one arm in the room.
 *
 * @param hand the directions of the hand: {@code up} from the finger tips to the wrist, {@code out} to the thumb
 * @param closed whether the hand holds something
 */
public record Arm(V3 shoulder, V3 elbow, V3 wrist, Frame hand, boolean closed) {
    public V3 fingerTips() {
        return wrist.plus(hand.up(), -(closed ? 0.5 : 0.97) * BodyRatios.HAND);
    }

    /** Where a held thing passes through the hand. */
    public V3 grip() {
        return wrist.plus(hand.up(), -0.030);
    }

    Arm moved(V3 by) {
        return new Arm(shoulder.plus(by), elbow.plus(by), wrist.plus(by), hand, closed);
    }
}
