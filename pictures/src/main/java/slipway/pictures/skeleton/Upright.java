package slipway.pictures.skeleton;

import java.util.List;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Support;
import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/** Standing, sitting, kneeling, on all fours: the legs carry the body, the pelvis follows from their angles. */
final class Upright {
    /** Share of a bent low back that the pelvis rolls back on the seat, so that a slumped body stays over it. */
    private static final double ROLL_BACK = 0.38;
    /** Heights of the hip joints over the floor between which a seat is drawn to fit the feet. */
    private static final double LOW_SEAT = 0.25;

    private static final double HIGH_SEAT = 0.31;

    /** Height of the shoulders over hands on the floor, elbows hardly bent. */
    private static final double SHOULDERS_ON_HANDS = 0.318;
    /** Rounding error of a touch. */
    private static final double TOUCHES = 1e-9;

    private Upright() {}

    static Resting standing(BodyAngles a) {
        Limb stance = reach(a.own()) > reach(a.other()) + 0.004 ? Limb.OWN : Limb.OTHER;
        Skeleton upright = Skeleton.of(V3.ZERO, Frame.standing(), a);
        double pitch = pitchForFlatFoot(a, stance);
        if (!balanced(upright, stance, pitch)) {
            // Falling backwards over the heel: the heel rises instead.
            LegAngles leg = a.leg(stance);
            pitch = pitchForFlatFoot(a.withLeg(stance, leg.withAnkle(Math.max(0, leg.ankle()))), stance);
        }
        return new Resting(Support.STANDING, onFloor(Frame.standing().pitched(pitch), a), stance);
    }

    /** Distance from the hip to the sole of the heel: the longer leg carries. */
    private static double reach(LegAngles leg) {
        Leg bones = Leg.of(V3.ZERO, Frame.standing(), leg);
        return bones.foot().at(bones.ankle(), 0, 0, -BodyRatios.ANKLE_HEIGHT).length();
    }

    private static double pitchForFlatFoot(BodyAngles a, Limb limb) {
        Leg leg = Skeleton.of(V3.ZERO, Frame.standing(), a).leg(limb);
        V3 toes = leg.foot().front();
        return Math.atan2(toes.z(), toes.x());
    }

    private static boolean balanced(Skeleton upright, Limb stance, double pitch) {
        V3 forward = new V3(Math.cos(pitch), 0, Math.sin(pitch));
        V3 mass = upright.trunk().at(0.55).times(0.56).plus(upright.headCentre(), 0.09);
        for (Limb limb : Limb.values()) {
            mass = mass.plus(upright.leg(limb).knee(), 0.12)
                    .plus(upright.leg(limb).ankle(), 0.055);
        }
        Leg leg = upright.leg(stance);
        return mass.minus(leg.ankle()).dot(forward) > -BodyRatios.HEEL_BACK - 0.01;
    }

    private static Skeleton onFloor(Frame pelvis, BodyAngles a) {
        Skeleton floating = Skeleton.of(V3.ZERO, pelvis, a);
        return Skeleton.of(new V3(0, 0, -lowest(floating)), pelvis, a);
    }

    /** The lowest point of trunk, head and legs. */
    static double lowest(Skeleton s) {
        double legs = Math.min(Solid.lowest(Flesh.leg(s.own()), V3.Z), Solid.lowest(Flesh.leg(s.other()), V3.Z));
        return Math.min(legs, Solid.lowest(List.of(Flesh.trunk(s.trunk()), Flesh.head(s)), V3.Z));
    }

    static Resting sitting(BodyAngles start, Ground ground) {
        double roll = ROLL_BACK * Math.max(0, start.spine());
        BodyAngles a = start.withLeg(Limb.OWN, start.own().withHip(start.own().hip() - roll))
                .withLeg(Limb.OTHER, start.other().withHip(start.other().hip() - roll));
        // The lower thigh lies on the seat.
        Limb carrier = a.own().hip() < a.other().hip() && !CrossedLeg.meant(a) ? Limb.OWN : Limb.OTHER;
        Frame pelvis = Frame.standing().pitched(a.leg(carrier).hip() - Math.PI / 2);
        double hipHeight = seatFor(pelvis, a);
        V3 hips = new V3(0, 0, hipHeight);
        Skeleton s = Skeleton.of(hips, pelvis, a);
        for (Limb limb : Limb.values()) {
            boolean settles = limb == Limb.OWN ? ground.ownFootSettles() : ground.otherFootSettles();
            a = a.withLeg(limb, seatedLeg(s, limb, a.leg(limb), settles));
        }
        s = Skeleton.of(hips, pelvis, a);
        if (CrossedLeg.meant(a)) {
            a = a.withLeg(Limb.OWN, CrossedLeg.onOtherThigh(s, a.own()));
            s = Skeleton.of(hips, pelvis, a);
        }
        double sunk = Math.min(0, lowest(s));
        return new Resting(Support.SITTING, Skeleton.of(new V3(0, 0, hipHeight - sunk), pelvis, a), carrier);
    }

    private static double seatFor(Frame pelvis, BodyAngles a) {
        Skeleton s = Skeleton.of(V3.ZERO, pelvis, a);
        double deepest = Math.min(s.own().ankle().z(), s.other().ankle().z());
        return LegRest.clamp(BodyRatios.ANKLE_HEIGHT - deepest, LOW_SEAT, HIGH_SEAT);
    }

    /** A foot near the floor is laid flat on it; one that would sink into it is lifted by the knee. */
    private static LegAngles seatedLeg(Skeleton s, Limb limb, LegAngles a, boolean settles) {
        Leg leg = s.leg(limb);
        LegAngles eased = a;
        if (settles) {
            double near = 1 - LegRest.clamp((leg.ankle().z() - 0.05) / 0.05, 0, 1);
            eased = a.withAnkle(a.ankle() + near * (LegRest.flatAnkle(leg.shank()) - a.ankle()));
        }
        LegAngles flat = eased;
        V3 hip = leg.hip();
        Frame outwards = s.pelvis(limb);
        if (Solid.lowest(Flesh.lowerLeg(Leg.of(hip, outwards, flat)), V3.Z) >= -TOUCHES) {
            return flat;
        }
        return flat.withKnee(Balance.zero(
                knee -> Solid.lowest(Flesh.lowerLeg(Leg.of(hip, outwards, flat.withKnee(knee))), V3.Z),
                flat.knee(),
                flat.knee() - Math.toRadians(50)));
    }

    /** Kneeling and all fours: the shin of the carrying leg lies on the floor. */
    static Resting kneeling(Support support, BodyAngles start, Ground ground) {
        Limb carrier = start.own().knee() > start.other().knee() + Math.toRadians(20) ? Limb.OWN : carrierByHip(start);
        BodyAngles a = start;
        for (Limb limb : Limb.values()) {
            boolean settles = limb == Limb.OWN ? ground.ownFootSettles() : ground.otherFootSettles();
            LegAngles leg = a.leg(limb);
            boolean shinDown = Math.abs(leg.hip() - start.leg(carrier).hip()) < Math.toRadians(25)
                    && leg.knee() > Math.toRadians(60);
            if (settles && shinDown) {
                a = a.withLeg(limb, leg.withAnkle(Math.min(leg.ankle(), Math.toRadians(-52))));
            }
        }
        Skeleton upright = Skeleton.of(V3.ZERO, Frame.standing(), a);
        Leg leg = upright.leg(carrier);
        double level = Math.atan2(leg.shank().up().z(), leg.shank().up().x());
        double pitch = Balance.zero(
                p -> Solid.lowest(Flesh.knee(leg), up(p)) - Solid.lowest(Flesh.foot(leg), up(p)),
                level - Math.toRadians(30),
                level + Math.toRadians(30));
        Frame pelvis = Frame.standing().pitched(pitch);
        BodyAngles planted = plantFoot(a, pelvis, carrier.opposite(), ground);
        Skeleton rested = onFloor(pelvis, planted);
        return new Resting(support, support == Support.ALL_FOURS ? onHands(rested, pitch, planted) : rested, carrier);
    }

    /** On all fours the pelvis tips until nearly straight arms reach the floor; the thighs stay. */
    private static Skeleton onHands(Skeleton rested, double pitch, BodyAngles a) {
        V3 hips = rested.trunk().hips();
        double tip = Balance.zero(
                t -> tipped(hips, pitch, a, t).shoulder(Limb.OTHER).z() - SHOULDERS_ON_HANDS,
                Math.toRadians(-60),
                Math.toRadians(35));
        Skeleton s = tipped(hips, pitch, a, tip);
        return s.moved(new V3(0, 0, -lowest(s)));
    }

    private static Skeleton tipped(V3 hips, double pitch, BodyAngles a, double tip) {
        BodyAngles legsStay = a.withLeg(Limb.OWN, a.own().withHip(a.own().hip() + tip))
                .withLeg(Limb.OTHER, a.other().withHip(a.other().hip() + tip));
        return Skeleton.of(hips, Frame.standing().pitched(pitch + tip), legsStay);
    }

    private static BodyAngles plantFoot(BodyAngles a, Frame pelvis, Limb limb, Ground ground) {
        boolean settles = limb == Limb.OWN ? ground.ownFootSettles() : ground.otherFootSettles();
        Leg leg = Skeleton.of(V3.ZERO, pelvis, a).leg(limb);
        // Half kneeling: a foot in front under an upright shin stands flat.
        return settles && leg.shank().up().z() > 0.75
                ? a.withLeg(limb, a.leg(limb).withAnkle(LegRest.flatAnkle(leg.shank())))
                : a;
    }

    private static Limb carrierByHip(BodyAngles a) {
        return a.other().hip() > a.own().hip() + Math.toRadians(35) && a.own().knee() > Math.toRadians(60)
                ? Limb.OWN
                : Limb.OTHER;
    }

    /** Which way is up for a body that is built upright and then pitched forward. */
    static V3 up(double pitch) {
        return new V3(-Math.sin(pitch), 0, Math.cos(pitch));
    }
}
