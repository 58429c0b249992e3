package slipway.pictures.skeleton;

import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Support;
import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/** Brings the arms to where the hands are needed: two bones between shoulder and wrist, no elbow in the floor. */
public final class Reach {
    private static final double ELBOW_RADIUS = 0.0205;
    private static final double STRETCHED = 0.998;

    private Reach() {}

    /** The arm of a side of a body at rest. */
    public static Arm of(Resting body, Arms arms, Limb limb) {
        V3 shoulder = body.skeleton().shoulder(limb);
        Hand hand = new HandPlaces(body, limb).of(arms);
        double reach = STRETCHED * (BodyRatios.UPPER_ARM + BodyRatios.FOREARM);
        V3 way = hand.wrist().minus(shoulder);
        V3 direction = way.unitOr(V3.Z.times(-1));
        double distance = LegRest.clamp(way.length(), 0.07, reach);
        V3 wrist = shoulder.plus(direction, distance);
        V3 elbow = elbow(shoulder, direction, distance, hand.elbowTo(), lowestElbow(body));
        return new Arm(shoulder, elbow, wrist, handFrame(hand, wrist.minus(elbow)), hand.closed());
    }

    private static double lowestElbow(Resting body) {
        return body.support() == Support.SITTING || body.support() == Support.STANDING ? -1 : ELBOW_RADIUS;
    }

    private static V3 elbow(V3 shoulder, V3 direction, double distance, V3 to, double lowest) {
        double a = BodyRatios.UPPER_ARM;
        double b = BodyRatios.FOREARM;
        double cos = LegRest.clamp((a * a + distance * distance - b * b) / (2 * a * distance), -1, 1);
        double out = a * Math.sqrt(1 - cos * cos);
        V3 foot = shoulder.plus(direction, a * cos);
        V3 side = to.across(direction).unitOr(V3.Z.across(direction).unitOr(V3.X));
        V3 third = direction.cross(side);
        // The nearest turn about the line from shoulder to wrist that keeps the elbow over the floor.
        for (int step = 0; step <= 18; step++) {
            for (int sign = 1; sign >= -1; sign -= 2) {
                V3 elbow = foot.plus(side.turned(third, sign * Math.toRadians(10 * step)), out);
                if (elbow.z() >= lowest) {
                    return elbow;
                }
            }
        }
        return foot.plus(V3.Z.across(direction).unitOr(side), out);
    }

    private static Frame handFrame(Hand hand, V3 forearm) {
        V3 fingers = hand.fingers().unitOr(forearm.unitOr(V3.X));
        V3 thumb = hand.thumb()
                .across(fingers)
                .unitOr(V3.Z.across(fingers).unitOr(V3.X.across(fingers).unitOr(V3.Y)));
        return new Frame(fingers.cross(thumb), thumb, fingers.times(-1));
    }
}
