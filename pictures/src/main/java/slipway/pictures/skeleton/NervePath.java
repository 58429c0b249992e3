package slipway.pictures.skeleton;

import java.util.ArrayList;
import java.util.List;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Segment;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.pictures.space.V3;

/**
 * Where a nerve of the own leg runs in a drawn body. Places are anatomical in order and side (behind the hip and knee,
 * around the fibular neck, behind an ankle bone), their depths are chosen for drawing.
 */
public final class NervePath {
    private static final int STEPS = 6;

    /** Where the branch to the muscle at the front of the thigh is drawn to, as a fraction of the thigh. */
    private static final double MUSCLE_BRANCH_ENDS = 0.6;

    private NervePath() {}

    /** The whole path from the neck to the end of the nerve. */
    public static List<V3> of(Body body, Tract tract) {
        var path = new ArrayList<V3>();
        boolean endsInThigh = tract == Tract.FEMORAL_QUADRICEPS;
        for (Segment segment : Segment.values()) {
            if (endsInThigh && segment == Segment.THIGH) {
                path.add(at(body, tract, segment, 0));
                path.add(at(body, tract, segment, MUSCLE_BRANCH_ENDS));
                return path;
            }
            for (int i = 0; i < STEPS; i++) {
                path.add(at(body, tract, segment, (double) i / STEPS));
            }
        }
        path.add(at(body, tract, Segment.FOOT, 1));
        return path;
    }

    /** The place of a site on this tract. */
    public static V3 site(Body body, Tract tract, Site site) {
        return at(body, tract, site.segment(), site.position());
    }

    private static V3 at(Body body, Tract tract, Segment segment, double t) {
        Skeleton s = body.bones();
        return switch (segment) {
            case CORD -> cord(s, t);
            case CANAL -> behindSpine(s, 0.42 - 0.26 * t);
            case PELVIS -> {
                if (tract.pathway() == Pathway.FRONT) {
                    yield throughPsoas(s, tract, t);
                }
                V3 start = behindSpine(s, 0.16);
                V3 buttock =
                        s.pelvis(slipway.mechanics.body.Limb.OWN).at(s.own().hip(), -0.040, -0.012, 0.012);
                V3 hip = thigh(s.own(), tract, 0);
                yield start.towards(buttock, t).towards(buttock.towards(hip, t), t);
            }
            case THIGH -> thigh(s.own(), tract, t);
            case SHANK -> shank(s.own(), tract, t);
            case FOOT -> foot(s.own(), tract, t);
        };
    }

    /** Along psoas, beside the spine and then in front of the hip joint. */
    private static V3 throughPsoas(Skeleton s, Tract tract, double t) {
        V3 start = behindSpine(s, 0.22);
        V3 psoas = s.pelvis(slipway.mechanics.body.Limb.OWN).at(s.own().hip(), 0.028, -0.004, 0.060);
        V3 groin = thigh(s.own(), tract, 0);
        return start.towards(psoas, t).towards(psoas.towards(groin, t), t);
    }

    private static V3 cord(Skeleton s, double t) {
        V3 skull = s.head().at(s.headCentre(), -0.022, 0, -0.03);
        V3 neck = behindSpine(s, 0.96);
        return t < 0.3 ? skull.towards(neck, t / 0.3) : behindSpine(s, 0.96 - (t - 0.3) / 0.7 * 0.54);
    }

    private static V3 behindSpine(Skeleton s, double along) {
        return s.trunk().at(along).plus(s.trunk().frameAt(along).front(), -0.030);
    }

    private static V3 thigh(Leg leg, Tract tract, double t) {
        V3 bone = leg.hip().towards(leg.knee(), t);
        if (tract == Tract.FEMORAL_QUADRICEPS) {
            return leg.thigh().at(bone, 0.036 + 0.004 * t, 0, 0);
        }
        if (tract == Tract.FEMORAL_SAPHENOUS) {
            return leg.thigh().at(bone, 0.036 - 0.034 * t, -0.022 * t, 0);
        }
        double out = fibular(tract) ? 0.016 * Math.max(0, t - 0.6) / 0.4 : 0;
        return leg.thigh().at(bone, -0.027 + 0.009 * t, out, 0);
    }

    private static boolean fibular(Tract tract) {
        return tract == Tract.SCIATIC_FIBULAR || tract == Tract.SCIATIC_SUPERFICIAL_FIBULAR;
    }

    private static V3 shank(Leg leg, Tract tract, double t) {
        V3 bone = leg.knee().towards(leg.ankle(), t);
        double knee = fibular(tract) ? 0.016 : 0;
        return switch (tract) {
            case SCIATIC_TIBIAL -> leg.shank().at(bone, -0.018 + 0.002 * t, -0.013 * t, 0);
            case SCIATIC_SURAL -> leg.shank().at(bone, -0.020 + 0.006 * t, 0.016 * t, 0);
            case FEMORAL_SAPHENOUS -> leg.shank().at(bone, 0.002 + 0.006 * t, -0.022 + 0.006 * t, 0);
            default -> {
                double round = Math.min(1, t / 0.10);
                double forward = Math.min(1, t / 0.45);
                yield leg.shank().at(bone, -0.018 + 0.030 * forward, knee + 0.014 * round * (1 - t), 0);
            }
        };
    }

    private static V3 foot(Leg leg, Tract tract, double t) {
        V3 start = shank(leg, tract, 1);
        V3 end = switch (tract) {
            case SCIATIC_TIBIAL -> leg.foot().at(leg.ball(), 0, -0.006, -0.006);
            case FEMORAL_SAPHENOUS -> leg.foot().at(leg.ankle(), 0.045, -0.018, -0.010);
            case SCIATIC_SURAL -> leg.foot().at(leg.ball(), 0, 0.024, 0);
            default -> leg.foot().at(leg.ball(), 0.010, -0.004, 0.010);
        };
        V3 bend = switch (tract) {
            case SCIATIC_TIBIAL -> leg.foot().at(leg.ankle(), 0.004, -0.010, -0.026);
            case FEMORAL_SAPHENOUS -> leg.foot().at(leg.ankle(), 0.015, -0.020, 0);
            case SCIATIC_SURAL -> leg.foot().at(leg.ankle(), -0.004, 0.018, -0.020);
            default -> leg.foot().at(leg.ankle(), 0.026, 0.004, 0.004);
        };
        return start.towards(bend, t).towards(bend.towards(end, t), t);
    }
}
