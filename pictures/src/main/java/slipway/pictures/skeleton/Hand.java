package slipway.pictures.skeleton;

import slipway.pictures.space.V3;

/**
 * Where a hand goes.
 *
 * @param wrist the wrist, if the arm is long enough
 * @param elbowTo the direction to which the elbow points
 * @param fingers the direction of the fingers
 * @param thumb roughly the direction of the thumb
 * @param closed whether the hand holds something
 */
record Hand(V3 wrist, V3 elbowTo, V3 fingers, V3 thumb, boolean closed) {
    static Hand open(V3 wrist, V3 elbowTo, V3 fingers, V3 thumb) {
        return new Hand(wrist, elbowTo, fingers, thumb, false);
    }

    static Hand holding(V3 wrist, V3 elbowTo, V3 fingers, V3 thumb) {
        return new Hand(wrist, elbowTo, fingers, thumb, true);
    }
}
