package slipway.pictures.skeleton;

import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/**
 * The joints of one leg in the room. Each frame's {@code up} points back along its part, towards the hip; the foot's
 * front points to the toes and its up away from the sole. {@code out} points away from the other leg.
 */
public record Leg(V3 hip, V3 knee, V3 ankle, V3 ball, V3 toe, Frame thigh, Frame shank, Frame foot, Frame toes) {

    static Leg of(V3 hip, Frame pelvisOutwards, LegAngles a) {
        // Hip flexion brings the thigh, which hangs down, to the front: the upper end seems to go back.
        Frame thigh = pelvisOutwards.pitched(-a.hip()).leaned(-a.abduction()).twisted(-a.rotation());
        V3 knee = hip.plus(thigh.up(), -BodyRatios.THIGH);
        Frame shank = thigh.pitched(a.knee());
        V3 ankle = knee.plus(shank.up(), -BodyRatios.SHANK);
        Frame foot = shank.pitched(-a.ankle()).leaned(a.inversion());
        V3 ball = foot.at(
                ankle,
                BodyRatios.FOOT - BodyRatios.HEEL_BACK - BodyRatios.TOES,
                0,
                -(BodyRatios.ANKLE_HEIGHT - Flesh.BALL_RADIUS));
        Frame toes = foot.pitched(-a.toes());
        return new Leg(hip, knee, ankle, ball, ball.plus(toes.front(), BodyRatios.TOES), thigh, shank, foot, toes);
    }

    Leg moved(V3 by) {
        return new Leg(
                hip.plus(by), knee.plus(by), ankle.plus(by), ball.plus(by), toe.plus(by), thigh, shank, foot, toes);
    }
}
