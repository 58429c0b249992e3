package slipway.pictures.skeleton;

import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Support;
import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/**
 * Where the hand of one side goes for each thing that hands do. Distances are fractions of stature, chosen for drawing.
 */
final class HandPlaces {
    private static final double ON_FLOOR = 0.016;
    private static final double ARM = BodyRatios.UPPER_ARM + BodyRatios.FOREARM;

    private final Resting body;
    private final Skeleton bones;
    private final Limb limb;
    private final V3 shoulder;
    private final Frame chest;
    private final Frame hips;

    HandPlaces(Resting body, Limb limb) {
        this.body = body;
        this.bones = body.skeleton();
        this.limb = limb;
        this.shoulder = bones.shoulder(limb);
        this.chest = bones.thorax(limb);
        this.hips = bones.pelvis(limb);
    }

    Hand of(Arms arms) {
        return switch (arms) {
            case ALONG_SIDES -> alongSide();
            case ON_THIGHS -> onThigh();
            case ON_HIPS -> onHip();
            case FOLDED -> folded();
            case UNDER_HEAD -> underHead();
            case OVERHEAD -> overhead();
            case FORWARD -> free(chest.at(shoulder, 0.96 * ARM, 0, 0), chest.down(), chest.front());
            case SWINGING -> swinging();
            case BEHIND_BACK -> behindBack();
            case HOLD_STRAP -> holdStrap();
            case BEHIND_THIGH -> behindThigh(heldThigh());
            case HOLD_KNEE -> onShin(bones.own(), limb == Limb.OWN ? 1 : -1);
            case HOLD_KNEES -> onShin(bones.leg(limb), 1);
            case HOLD_ANKLE -> limb == Limb.OWN ? holdAnkle() : alongSide();
            case ON_CHAIR -> onChair();
            case ON_WALL -> onWall();
            case ON_FLOOR -> onFloor();
            case FOREARMS_ON_FLOOR -> forearmOnFloor();
        };
    }

    private boolean lying() {
        return switch (body.support()) {
            case LYING, PRONE, SIDE_LYING -> true;
            default -> false;
        };
    }

    private Hand free(V3 wrist, V3 elbowTo, V3 fingers) {
        return Hand.open(wrist, elbowTo, fingers, chest.up());
    }

    private static V3 down(V3 v) {
        return new V3(v.x(), v.y(), ON_FLOOR);
    }

    private Hand alongSide() {
        if (body.support() == Support.SIDE_LYING) {
            return onSide();
        }
        V3 along = chest.down().plus(chest.out(), 0.14).plus(chest.front(), lying() ? 0 : 0.10);
        V3 wrist = shoulder.plus(along.unitOr(V3.X), 0.965 * ARM);
        if (lying()) {
            V3 flat = down(wrist);
            return Hand.open(
                    flat,
                    chest.out(),
                    chest.down().plus(V3.Z, -0.05),
                    chest.out().times(-1));
        }
        if (body.support() == Support.LONG_SITTING || body.support() == Support.KNEELING) {
            wrist = new V3(wrist.x(), wrist.y(), Math.max(wrist.z(), 0.03));
        }
        // Arms hang: a bent trunk leaves them pointing down.
        if (chest.up().z() < 0.8) {
            V3 hanging = shoulder.plus(new V3(0, 0, -Math.min(0.97 * ARM, Math.max(0.1, shoulder.z() - 0.12))));
            return Hand.open(hanging, chest.up().plus(chest.out(), 0.3), V3.Z.times(-1), chest.front());
        }
        return Hand.open(wrist, chest.front().times(-1).plus(chest.out(), 0.3), chest.down(), chest.front());
    }

    private Hand onSide() {
        if (limb == Limb.OWN) {
            // Upper hand on the mat in front of the chest, as a stay.
            V3 front = chest.at(bones.trunk().at(0.72), 0.155, 0, 0);
            return Hand.open(
                    down(front),
                    chest.down().plus(chest.out(), 0.6),
                    chest.front().plus(chest.up(), 0.3),
                    chest.up());
        }
        V3 under = chest.at(shoulder, 0.24, 0, 0.14);
        return Hand.open(down(under), chest.front(), chest.up().plus(chest.front(), 0.4), chest.front());
    }

    private Hand onThigh() {
        Leg leg = bones.leg(limb);
        V3 wrist = leg.hip().towards(leg.knee(), 0.55).plus(leg.thigh().front(), 0.056);
        return Hand.open(
                wrist,
                chest.out().plus(chest.front(), -0.8).plus(chest.up(), -0.4),
                leg.thigh().down().plus(leg.thigh().front(), -0.12),
                leg.thigh().out().times(-1));
    }

    private Hand onHip() {
        V3 wrist = hips.at(bones.trunk().at(0.26), -0.004, 0.098, 0.0);
        return Hand.open(
                wrist,
                chest.out().plus(chest.front(), -0.5),
                hips.front().plus(hips.down(), 0.8).plus(hips.out(), -0.2),
                hips.front().times(-1).plus(hips.down(), 0.4));
    }

    private Hand folded() {
        V3 wrist = chest.at(bones.trunk().at(limb == Limb.OWN ? 0.66 : 0.71), 0.082, 0.015, 0);
        return Hand.open(
                wrist,
                chest.down().plus(chest.out(), 0.7),
                chest.out().times(-1).plus(chest.up(), 0.15),
                chest.up());
    }

    private Hand underHead() {
        Frame head = limb == Limb.OWN ? bones.head() : bones.head().otherSide();
        V3 centre = bones.headCentre();
        return switch (body.support()) {
            case SIDE_LYING ->
                limb == Limb.OWN
                        ? onSide()
                        : Hand.open(down(head.at(centre, 0.05, 0, -0.045)), chest.front(), head.up(), head.front());
            case PRONE -> {
                V3 wrist = down(head.at(centre, 0, 0.085, 0.035));
                yield Hand.open(wrist, head.out(), head.out().times(-1).plus(head.up(), 0.2), head.up());
            }
            default ->
                Hand.open(
                        head.at(centre, -0.052, 0.045, -0.012),
                        head.out().plus(head.up(), 0.7),
                        head.out().times(-1).plus(head.up(), 0.3),
                        head.down());
        };
    }

    private Hand overhead() {
        V3 wrist = chest.at(shoulder, lying() ? 0 : 0.03, 0.02, 0.965 * ARM);
        V3 placed = lying() ? new V3(wrist.x(), wrist.y(), Math.max(ON_FLOOR, wrist.z() - 0.05)) : wrist;
        return Hand.open(placed, chest.out(), chest.up(), chest.front().plus(chest.out(), -0.5));
    }

    private Hand swinging() {
        double swing = limb == Limb.OWN ? -0.42 : 0.42;
        V3 along = V3.Z.times(-1)
                .plus(chest.front(), swing)
                .plus(chest.out(), 0.08)
                .unitOr(V3.X);
        return Hand.open(
                shoulder.plus(along, 0.94 * ARM),
                chest.front().times(-1),
                along.plus(chest.front(), 0.3),
                chest.front());
    }

    private Hand behindBack() {
        V3 wrist = hips.at(bones.trunk().at(0.28), -0.068, 0.030, 0);
        return Hand.open(
                wrist,
                chest.out().plus(chest.front(), -0.6),
                hips.out().times(-1).plus(hips.down(), 0.3),
                hips.up());
    }

    /** The hands hold the strap on its way from the forefoot to the shoulders. */
    private Hand holdStrap() {
        V3 sole = Strap.forefoot(bones.own());
        V3 from = shoulder.plus(chest.out(), -0.045);
        double distance = from.distance(sole);
        double reach = LegRest.clamp(distance - 0.05, 0.12, 0.68 * ARM);
        V3 pull = sole.minus(from).unitOr(chest.front());
        V3 wrist = from.plus(pull, reach);
        V3 elbowTo = chest.down().plus(chest.front(), -0.5).plus(chest.out(), 0.5);
        return Hand.holding(wrist, elbowTo, pull, chest.up().plus(chest.front(), 0.4));
    }

    /** The own thigh, unless the own ankle lies across the other one, which is then held. */
    private Leg heldThigh() {
        return CrossedLeg.crosses(bones) ? bones.other() : bones.own();
    }

    /** Behind the thigh as near the knee as the arms reach. */
    private Hand behindThigh(Leg leg) {
        // Of two hands behind one thigh one is on its outer side, the other on its inner.
        double side = bones.leg(limb).equals(leg) ? 0.020 : -0.020;
        for (double along = 0.78; along > 0.3; along -= 0.06) {
            V3 wrist = leg.hip()
                    .towards(leg.knee(), along)
                    .plus(leg.thigh().front(), -0.030)
                    .plus(leg.thigh().out(), 1.7 * side);
            if (wrist.distance(shoulder) < 0.985 * ARM || along < 0.37) {
                return Hand.open(
                        wrist,
                        chest.out().plus(chest.down(), 0.8),
                        leg.thigh().front().times(-0.6).plus(leg.thigh().out(), -30 * side),
                        leg.thigh().down());
            }
        }
        return alongSide();
    }

    /** Over the shin just under the knee, on the outer side of the leg (1) or the inner (-1). */
    private Hand onShin(Leg leg, int side) {
        V3 wrist = leg.knee()
                .towards(leg.ankle(), 0.13)
                .plus(leg.shank().front(), 0.026)
                .plus(leg.shank().out(), 0.026 * side);
        return Hand.open(
                wrist,
                chest.out().plus(chest.down(), 0.7),
                leg.shank()
                        .down()
                        .plus(leg.shank().front(), -0.35)
                        .plus(leg.shank().out(), -0.4 * side),
                leg.shank().up().plus(leg.shank().out(), -side));
    }

    private Hand holdAnkle() {
        Leg leg = bones.own();
        V3 wrist = leg.ankle().plus(leg.shank().up(), 0.02).plus(leg.shank().front(), 0.035);
        return Hand.holding(
                wrist,
                chest.out().plus(chest.front(), -1),
                leg.shank().front().times(-0.4).plus(leg.shank().down(), 0.8),
                leg.shank().up());
    }

    private Hand onChair() {
        if (body.support() == Support.SITTING) {
            V3 wrist = new V3(
                    bones.trunk().hips().x() - 0.015,
                    hips.at(bones.trunk().hips(), 0, 0.118, 0).y(),
                    body.seatHeight() + 0.024);
            return Hand.open(
                    wrist,
                    chest.front().times(-1).plus(chest.out(), 0.4),
                    new V3(0.9, 0, -0.35),
                    chest.out().times(-1));
        }
        V3 ahead = new V3(shoulder.x() + 0.25, shoulder.y(), 0.53);
        return Hand.holding(
                ahead,
                V3.Z.times(-1).plus(chest.out(), 0.3),
                new V3(0.9, 0, -0.4),
                chest.out().times(-1));
    }

    private Hand onWall() {
        V3 wrist = new V3(shoulder.x() + 0.25, shoulder.y(), shoulder.z() - 0.03);
        return Hand.open(
                wrist,
                V3.Z.times(-1).plus(chest.out(), 0.4),
                new V3(0.25, 0, 1),
                chest.out().times(-1));
    }

    private Hand onFloor() {
        V3 ahead = heading();
        double offset = switch (body.support()) {
            case LONG_SITTING -> -0.17;
            case LYING -> 0.05;
            default -> straightArmAhead();
        };
        V3 wrist = down(shoulder.plus(ahead, offset).plus(chest.out(), 0.02));
        V3 back = ahead.times(-1).plus(chest.out(), 0.5);
        V3 fingers = body.support() == Support.LONG_SITTING ? ahead.times(-1) : ahead;
        return Hand.open(wrist, back, fingers, chest.out().times(-1));
    }

    /** Nearly straight arms reach as far ahead as the shoulders are too low for straight ones under them. */
    private double straightArmAhead() {
        double needed = Math.sqrt(Math.max(0, square(0.975 * ARM) - square(shoulder.z())));
        return LegRest.clamp(needed, 0, 0.11) * LegRest.clamp((shoulder.z() - 0.20) / 0.06, 0, 1);
    }

    private static double square(double x) {
        return x * x;
    }

    private Hand forearmOnFloor() {
        double rise = Math.min(BodyRatios.UPPER_ARM, Math.max(0, shoulder.z() - 0.0225));
        double ahead = Math.sqrt(BodyRatios.UPPER_ARM * BodyRatios.UPPER_ARM - rise * rise);
        V3 elbow = new V3(shoulder.x(), shoulder.y(), 0.0225).plus(heading(), ahead);
        V3 wrist = down(elbow.plus(heading(), BodyRatios.FOREARM));
        return Hand.open(wrist, V3.Z.times(-1), heading(), chest.out().times(-1));
    }

    /** The level direction in which the body looks or, face down, in which its head lies. */
    private V3 heading() {
        V3 forward = chest.front().z() < -0.5 ? chest.up() : chest.front();
        return new V3(forward.x(), forward.y(), 0).unitOr(V3.X);
    }
}
