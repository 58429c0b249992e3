package slipway.pictures.skeleton;

import java.util.ArrayList;
import java.util.List;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Support;
import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/** Lying on the back, the belly or the side, and sitting with the legs out: the trunk lies, legs and head follow. */
final class Recline {
    private static final double FLAT_BACK = Math.toRadians(-90);
    private static final double FLAT_FRONT = Math.toRadians(90);

    private Recline() {}

    static Resting faceUp(BodyAngles start, Ground ground) {
        BodyAngles a = start;
        double pitch = trunkDown(a, FLAT_BACK);
        Limb bridge = bridgingLeg(start);
        if (bridgeHeight(a, bridge, pitch) < -0.02) {
            a = bridged(a, ground);
            pitch = bridgePitch(a);
            for (int round = 0; round < 3; round++) {
                a = flatFeet(a, Frame.standing().pitched(pitch), ground);
                pitch = bridgePitch(a);
            }
            return new Resting(Support.LYING, placed(pitch, headDown(a, pitch, ground, false)), bridge);
        }
        Skeleton s = onTrunk(pitch, a);
        for (Limb limb : Limb.values()) {
            a = a.withLeg(limb, new LegRest(s, limb, settles(ground, limb)).faceUp(a.leg(limb)));
        }
        if (CrossedLeg.meant(start)) {
            a = a.withLeg(Limb.OWN, CrossedLeg.onOtherThigh(onTrunk(pitch, a), start.own()));
        }
        return new Resting(Support.LYING, placed(pitch, headDown(a, pitch, ground, false)), Limb.OTHER);
    }

    private static boolean settles(Ground ground, Limb limb) {
        return limb == Limb.OWN ? ground.ownFootSettles() : ground.otherFootSettles();
    }

    /** The pitch at which pelvis and chest touch a level surface together. */
    private static double trunkDown(BodyAngles a, double about) {
        Trunk trunk = Trunk.of(V3.ZERO, Frame.standing(), a.spine(), a.spineSide());
        List<Solid> belly = List.of(Flesh.belly(trunk));
        List<Solid> chest = List.of(Flesh.chest(trunk));
        return Balance.zero(
                p -> Solid.lowest(belly, Upright.up(p)) - Solid.lowest(chest, Upright.up(p)),
                about - Math.toRadians(40),
                about + Math.toRadians(40));
    }

    private static Limb bridgingLeg(BodyAngles a) {
        return a.own().hip() < a.other().hip() && a.own().knee() > Math.toRadians(45) ? Limb.OWN : Limb.OTHER;
    }

    /** How high the heel would be if the trunk lay flat; far below the floor when the pelvis is held up. */
    private static double bridgeHeight(BodyAngles a, Limb limb, double pitch) {
        LegAngles leg = a.leg(limb);
        if (leg.knee() < Math.toRadians(45) || leg.hip() > Math.toRadians(38)) {
            return 0;
        }
        Skeleton s = onTrunk(pitch, a);
        return Solid.lowest(List.of(Flesh.shank(s.leg(limb))), V3.Z);
    }

    private static BodyAngles bridged(BodyAngles a, Ground ground) {
        return flatFeet(a, Frame.standing().pitched(FLAT_BACK - Math.toRadians(25)), ground);
    }

    private static double bridgePitch(BodyAngles a) {
        Skeleton s = Skeleton.of(V3.ZERO, Frame.standing(), a);
        List<Solid> chest = List.of(Flesh.chest(s.trunk()));
        var feet = new ArrayList<>(Flesh.foot(s.own()));
        feet.addAll(Flesh.foot(s.other()));
        return Balance.zero(
                p -> Solid.lowest(feet, Upright.up(p)) - Solid.lowest(chest, Upright.up(p)),
                FLAT_BACK - Math.toRadians(70),
                FLAT_BACK + Math.toRadians(10));
    }

    private static BodyAngles flatFeet(BodyAngles start, Frame pelvis, Ground ground) {
        BodyAngles a = start;
        for (Limb limb : Limb.values()) {
            Leg leg = Skeleton.of(V3.ZERO, pelvis, a).leg(limb);
            if (settles(ground, limb) && a.leg(limb).knee() > Math.toRadians(45)) {
                a = a.withLeg(limb, a.leg(limb).withAnkle(LegRest.flatAnkle(leg.shank())));
            }
        }
        return a;
    }

    /** Lets the neck give way until the head rests, or does not sink. */
    private static BodyAngles headDown(BodyAngles a, double pitch, Ground ground, boolean faceDown) {
        double height = headHeight(a, pitch);
        double target = ground.headOnPillow() ? Math.max(height, 0) : LegRest.settled(Math.max(height, 0));
        double towardsFloor = faceDown ? 1 : -1;
        double give = height > target ? towardsFloor : -towardsFloor;
        double neck = Balance.zero(
                n -> headHeight(a.withNeck(n), pitch) - target, a.neck(), a.neck() + give * Math.toRadians(60));
        return Math.abs(height - target) < 1e-6 ? a : a.withNeck(neck);
    }

    private static double headHeight(BodyAngles a, double pitch) {
        Skeleton s = Skeleton.of(V3.ZERO, Frame.standing(), a);
        V3 up = Upright.up(pitch);
        return Solid.lowest(List.of(Flesh.head(s)), up) - Solid.lowest(List.of(Flesh.trunk(s.trunk())), up);
    }

    /** The body with its trunk on the floor; legs may still hang into it. */
    private static Skeleton onTrunk(double pitch, BodyAngles a) {
        Frame pelvis = Frame.standing().pitched(pitch);
        Trunk trunk = Trunk.of(V3.ZERO, pelvis, a.spine(), a.spineSide());
        double low = Solid.lowest(List.of(Flesh.trunk(trunk)), V3.Z);
        return Skeleton.of(new V3(0, 0, -low), pelvis, a);
    }

    /** The whole body on the floor. */
    private static Skeleton placed(double pitch, BodyAngles a) {
        Frame pelvis = Frame.standing().pitched(pitch);
        double low = Upright.lowest(Skeleton.of(V3.ZERO, pelvis, a));
        return Skeleton.of(new V3(0, 0, -low), pelvis, a);
    }

    static Resting faceDown(BodyAngles start, Ground ground) {
        BodyAngles a = start;
        Limb down = a.own().hip() < a.other().hip() ? Limb.OTHER : Limb.OWN;
        Skeleton upright = Skeleton.of(V3.ZERO, Frame.standing(), a);
        List<Solid> belly = List.of(Flesh.belly(upright.trunk()));
        List<Solid> knee = List.of(
                new Solid.Tube(Flesh.thigh(upright.leg(down)).ellipsoids().subList(3, 6)));
        double pitch = Balance.zero(
                p -> Solid.lowest(belly, Upright.up(p)) - Solid.lowest(knee, Upright.up(p)),
                FLAT_FRONT - Math.toRadians(45),
                FLAT_FRONT + Math.toRadians(45));
        a = chestDown(a, pitch);
        Skeleton s = onTrunk(pitch, a);
        for (Limb limb : Limb.values()) {
            if (!ground.feetOverEnd()) {
                a = a.withLeg(limb, new LegRest(s, limb, settles(ground, limb)).faceDown(a.leg(limb)));
            }
        }
        BodyAngles head = headDown(a, pitch, ground, true);
        return new Resting(Support.PRONE, ground.feetOverEnd() ? onTrunk(pitch, head) : placed(pitch, head), down);
    }

    /** A chest that is nearly down is down; one that would sink rises by the low back. */
    private static BodyAngles chestDown(BodyAngles a, double pitch) {
        double height = chestHeight(a, pitch);
        double target = LegRest.settled(Math.max(0, height), 0.024, 0.05);
        double turn = height > target ? 1 : -1;
        return a.withSpine(Balance.zero(
                spine -> chestHeight(a.withSpine(spine), pitch) - target,
                a.spine(),
                a.spine() + turn * Math.toRadians(height > target ? 25 : 100)));
    }

    private static double chestHeight(BodyAngles a, double pitch) {
        Trunk trunk = Trunk.of(V3.ZERO, Frame.standing(), a.spine(), a.spineSide());
        V3 up = Upright.up(pitch);
        return Solid.lowest(List.of(Flesh.chest(trunk)), up) - Solid.lowest(List.of(Flesh.belly(trunk)), up);
    }

    static Resting longSitting(BodyAngles start, Ground ground) {
        Limb carrier = start.own().hip() > start.other().hip() + Math.toRadians(5) ? Limb.OTHER : Limb.OWN;
        Skeleton upright = Skeleton.of(V3.ZERO, Frame.standing(), start);
        List<Solid> seat = List.of(Flesh.belly(upright.trunk()));
        List<Solid> leg = Flesh.lowerLeg(upright.leg(carrier));
        double level = start.leg(carrier).hip() - Math.PI / 2;
        double pitch = Balance.zero(
                p -> Solid.lowest(seat, Upright.up(p)) - Solid.lowest(leg, Upright.up(p)),
                level - Math.toRadians(25),
                level + Math.toRadians(25));
        BodyAngles a = start;
        Skeleton s = onTrunk(pitch, a);
        for (Limb limb : Limb.values()) {
            a = a.withLeg(limb, new LegRest(s, limb, settles(ground, limb)).faceUp(a.leg(limb)));
        }
        return new Resting(Support.LONG_SITTING, placed(pitch, a), carrier);
    }

    /** On the other side, facing the viewer, head to the right: the own leg is on top. */
    static Resting sideways(BodyAngles start, Ground ground) {
        BodyAngles a = start;
        double tilt = Balance.zero(t -> sideGap(start, t), Math.toRadians(-25), Math.toRadians(25));
        Frame pelvis = tilted(tilt);
        Trunk trunk = Trunk.of(V3.ZERO, pelvis, a.spine(), a.spineSide());
        double low = Solid.lowest(List.of(Flesh.belly(trunk), Flesh.chest(trunk)), V3.Z);
        V3 hips = new V3(0, 0, -low);
        Skeleton s = Skeleton.of(hips, pelvis, a);
        double wide = Math.toRadians(45);
        a = a.withLeg(Limb.OTHER, new LegRest(s, Limb.OTHER, false).sideways(a.other(), 0, -wide, wide));
        double stacked = overlapping(start) ? 0.062 : 0;
        a = a.withLeg(Limb.OWN, new LegRest(s, Limb.OWN, false).sideways(a.own(), stacked, -wide, wide));
        if (CrossedLeg.meant(start)) {
            a = a.withLeg(Limb.OWN, CrossedLeg.heelOnHeel(Skeleton.of(hips, pelvis, a), start.own()));
        }
        Skeleton lying = Skeleton.of(hips, pelvis, a);
        double sunk = Upright.lowest(lying);
        return new Resting(Support.SIDE_LYING, Skeleton.of(new V3(0, 0, hips.z() - sunk), pelvis, a), Limb.OTHER);
    }

    private static boolean overlapping(BodyAngles a) {
        return Math.abs(a.own().hip() - a.other().hip()) < Math.toRadians(25)
                && Math.abs(a.own().knee() - a.other().knee()) < Math.toRadians(45);
    }

    private static Frame tilted(double tilt) {
        V3 out = V3.Z.turned(V3.X.times(-1), tilt);
        return new Frame(V3.Y.times(-1), out, V3.X.turned(V3.Z, tilt));
    }

    private static double sideGap(BodyAngles a, double tilt) {
        Trunk trunk = Trunk.of(V3.ZERO, tilted(tilt), a.spine(), a.spineSide());
        return Solid.lowest(List.of(Flesh.belly(trunk)), V3.Z) - Solid.lowest(List.of(Flesh.chest(trunk)), V3.Z);
    }
}
