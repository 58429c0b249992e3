package slipway.pictures.skeleton;

import java.util.List;
import slipway.mechanics.body.Limb;
import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/**
 * Lets a leg come to rest on the floor: nothing sinks, and what is nearly down is down. All corrections are continuous in
 * the joint angles, so that a moving figure does not jump.
 */
final class LegRest {
    /** A leg lower than this is taken to lie; above the second height nothing is corrected. Assumption for drawing. */
    private static final double LIES = 0.050;

    private static final double LIFTED = 0.130;
    private static final double MOST_LIFT = Math.toRadians(110);
    private static final double MOST_DROP = Math.toRadians(16);
    private static final double BENT = Math.toRadians(25);

    private final V3 hip;
    private final Frame outwards;
    private final boolean footSettles;

    LegRest(Skeleton trunk, Limb limb, boolean footSettles) {
        this.hip = trunk.leg(limb).hip();
        this.outwards = trunk.pelvis(limb);
        this.footSettles = footSettles;
    }

    /** Height at which something is drawn that would hang at a height. */
    static double settled(double height) {
        return settled(height, LIES, LIFTED);
    }

    /** The same with other heights: up to the first it lies, from the second on it is where it is. */
    static double settled(double height, double lies, double lifted) {
        if (height >= lifted) {
            return height;
        }
        return height <= lies ? 0 : (height - lies) * lifted / (lifted - lies);
    }

    private double lowest(LegAngles angles) {
        return Solid.lowest(Flesh.lowerLeg(Leg.of(hip, outwards, angles)), V3.Z);
    }

    /** Someone lies on the back or sits with the legs out: the hip gives way. */
    LegAngles faceUp(LegAngles start) {
        LegAngles angles = start;
        for (int round = 0; round < 3; round++) {
            angles = flatFoot(start, angles);
            angles = byHip(angles.withHip(start.hip()));
        }
        return angles;
    }

    private LegAngles byHip(LegAngles a) {
        // A foot under a bent knee is put down from further up than a straight leg.
        double bent = 0.06 * bent(a);
        double height = lowest(a);
        double target = settled(height, LIES + bent, LIFTED + bent);
        if (Math.abs(height - target) < 1e-9) {
            return a;
        }
        double low = height < target ? a.hip() : a.hip() - MOST_DROP;
        double high = height < target ? a.hip() + MOST_LIFT : a.hip();
        return a.withHip(Balance.zero(hipRad -> lowest(a.withHip(hipRad)) - target, low, high));
    }

    private double bent(LegAngles a) {
        return footSettles ? clamp((a.knee() - BENT) / Math.toRadians(20), 0, 1) : 0;
    }

    /** Lays the sole flat when the knee is bent and the foot is near the floor. */
    private LegAngles flatFoot(LegAngles start, LegAngles now) {
        if (!footSettles || start.knee() < BENT) {
            return now;
        }
        Leg leg = Leg.of(hip, outwards, now);
        double near = 1 - clamp((leg.ankle().z() - 0.10) / 0.10, 0, 1);
        double flat = flatAnkle(leg.shank());
        return now.withAnkle(start.ankle() + near * bent(start) * (flat - start.ankle()));
    }

    /** The ankle angle at which the sole is level, within what an ankle does. */
    static double flatAnkle(Frame shank) {
        return clamp(Math.atan2(shank.front().z() * -1, shank.up().z()), Math.toRadians(-60), Math.toRadians(35));
    }

    /** Someone lies on the belly: the foot is pointed if it may, and the knee bends until the toes are clear. */
    LegAngles faceDown(LegAngles start) {
        LegAngles a = start;
        if (footSettles && start.knee() < Math.toRadians(40)) {
            double straight = 1 - clamp(start.knee() / Math.toRadians(40), 0, 1);
            a = a.withAnkle(start.ankle() + straight * (Math.toRadians(-58) - start.ankle()));
        }
        LegAngles pointed = a;
        double height = lowestFoot(pointed);
        if (height >= -1e-9) {
            return pointed;
        }
        return pointed.withKnee(Balance.zero(
                knee -> lowestFoot(pointed.withKnee(knee)), pointed.knee(), pointed.knee() + Math.toRadians(60)));
    }

    private double lowestFoot(LegAngles angles) {
        Leg leg = Leg.of(hip, outwards, angles);
        return Math.min(Solid.lowest(Flesh.foot(leg), V3.Z), Solid.lowest(List.of(Flesh.shank(leg)), V3.Z));
    }

    /** Someone lies on the side: the leg sinks towards a height, or rises to it. */
    LegAngles sideways(LegAngles start, double floor, double least, double most) {
        double height = lowest(start) - floor;
        double target = settled(Math.max(height, 0));
        return start.withAbduction(Balance.zero(
                abduction -> lowest(start.withAbduction(abduction)) - floor - target,
                start.abduction() + least,
                start.abduction() + most));
    }

    static double clamp(double value, double low, double high) {
        return Math.min(high, Math.max(low, value));
    }
}
