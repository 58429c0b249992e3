package slipway.pictures.skeleton;

import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/**
 * A leg whose foot rests on the other leg: the ankle across the other thigh, or heel on heel with the knees apart. Joint
 * angles from a table never meet exactly; the hip gives way until the ankle is where it rests.
 */
final class CrossedLeg {
    private static final double MOST = Math.toRadians(40);
    private static final int ROUNDS = 40;
    /** How much a change of angle costs against a distance: keeps the leg near what was asked for. */
    private static final double STAY = 0.0004;

    private CrossedLeg() {}

    /** Whether the angles mean a foot that rests on the other leg. */
    static boolean meant(BodyAngles a) {
        return a.own().rotation() < Math.toRadians(-20)
                && a.own().abduction() > Math.toRadians(14)
                && a.own().knee() > Math.toRadians(60)
                && a.other().hip() > Math.toRadians(35)
                && a.other().knee() > Math.toRadians(40);
    }

    /** Whether the own ankle lies across the other thigh. */
    static boolean crosses(Skeleton s) {
        return s.own().ankle().distance(onThigh(s.other())) < 0.06;
    }

    private static V3 onThigh(Leg other) {
        return other.hip().towards(other.knee(), 0.80).plus(other.thigh().front(), 0.068);
    }

    /** The own leg with its ankle on the other thigh just above the knee. */
    static LegAngles onOtherThigh(Skeleton s, LegAngles start) {
        return meeting(s, start, onThigh(s.other()));
    }

    /** The own leg with its ankle over the other ankle, knees apart, for someone on the side. */
    static LegAngles heelOnHeel(Skeleton s, LegAngles start) {
        return meeting(s, start, s.other().ankle().plus(V3.Z, 0.045));
    }

    private static LegAngles meeting(Skeleton s, LegAngles start, V3 place) {
        V3 hip = s.own().hip();
        Frame pelvis = s.trunk().pelvis();
        LegAngles best = start;
        double least = cost(hip, pelvis, start, start, place);
        double step = Math.toRadians(12);
        for (int round = 0; round < ROUNDS; round++) {
            boolean better = false;
            for (int way = 0; way < 6; way++) {
                LegAngles next = turned(best, way / 2, (way % 2 == 0 ? 1 : -1) * step);
                double cost = cost(hip, pelvis, start, next, place);
                if (cost < least) {
                    least = cost;
                    best = next;
                    better = true;
                }
            }
            step = better ? step : 0.6 * step;
        }
        return best;
    }

    private static LegAngles turned(LegAngles a, int axis, double by) {
        return new LegAngles(
                a.hip() + (axis == 0 ? by : 0),
                a.abduction() + (axis == 1 ? by : 0),
                a.rotation() + (axis == 2 ? by : 0),
                a.knee(),
                a.ankle(),
                a.inversion(),
                a.toes());
    }

    private static double cost(V3 hip, Frame pelvis, LegAngles start, LegAngles a, V3 place) {
        V3 miss = Leg.of(hip, pelvis, a).ankle().minus(place);
        double h = a.hip() - start.hip();
        double b = a.abduction() - start.abduction();
        double r = a.rotation() - start.rotation();
        double far = Math.max(0, Math.max(Math.abs(h), Math.max(Math.abs(b), Math.abs(r))) - MOST);
        return miss.dot(miss) + STAY * (h * h + b * b + r * r) + far;
    }
}
