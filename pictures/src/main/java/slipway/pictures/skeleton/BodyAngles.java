package slipway.pictures.skeleton;

import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;

/** Joint angles of the body as drawn, in radians: those of the posture, eased where the body rests on something. */
record BodyAngles(LegAngles own, LegAngles other, double spine, double spineSide, double neck) {

    static BodyAngles of(Posture posture) {
        return new BodyAngles(
                LegAngles.of(posture, Limb.OWN),
                LegAngles.of(posture, Limb.OTHER),
                Math.toRadians(posture.angleDeg(Joint.SPINE)),
                Math.toRadians(posture.angleDeg(Joint.SPINE_SIDE)),
                Math.toRadians(posture.angleDeg(Joint.NECK)));
    }

    LegAngles leg(Limb limb) {
        return limb == Limb.OWN ? own : other;
    }

    BodyAngles withLeg(Limb limb, LegAngles leg) {
        return limb == Limb.OWN
                ? new BodyAngles(leg, other, spine, spineSide, neck)
                : new BodyAngles(own, leg, spine, spineSide, neck);
    }

    BodyAngles withSpine(double rad) {
        return new BodyAngles(own, other, rad, spineSide, neck);
    }

    BodyAngles withNeck(double rad) {
        return new BodyAngles(own, other, spine, spineSide, rad);
    }
}
