package slipway.pictures.skeleton;

import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;

/** Joint angles of one leg as drawn, in radians, same zero and signs as {@link Joint}. */
record LegAngles(
        double hip, double abduction, double rotation, double knee, double ankle, double inversion, double toes) {

    static LegAngles of(Posture posture, Limb limb) {
        return new LegAngles(
                rad(posture, Joint.HIP, limb),
                rad(posture, Joint.HIP_ABDUCTION, limb),
                rad(posture, Joint.HIP_ROTATION, limb),
                rad(posture, Joint.KNEE, limb),
                rad(posture, Joint.ANKLE, limb),
                rad(posture, Joint.ANKLE_INVERSION, limb),
                rad(posture, Joint.TOES, limb));
    }

    private static double rad(Posture posture, Joint joint, Limb limb) {
        return Math.toRadians(posture.angleDeg(joint, limb));
    }

    LegAngles withHip(double rad) {
        return new LegAngles(rad, abduction, rotation, knee, ankle, inversion, toes);
    }

    LegAngles withAbduction(double rad) {
        return new LegAngles(hip, rad, rotation, knee, ankle, inversion, toes);
    }

    LegAngles withKnee(double rad) {
        return new LegAngles(hip, abduction, rotation, rad, ankle, inversion, toes);
    }

    LegAngles withAnkle(double rad) {
        return new LegAngles(hip, abduction, rotation, knee, rad, inversion, toes);
    }
}
