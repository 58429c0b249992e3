package slipway.reasoning;

import java.util.Map;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Segment;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;

/**
 * A nerve in closed form for tests: each joint stretches the pathway around it, less the further away, and everything is
 * linear in the angles. Hip, spine and neck flexion, knee extension and dorsiflexion load; draws differ by a factor.
 */
public final class ChainNerve implements NerveModel {
    private static final double REACH_M = 0.35;
    private static final int NODES = 40;
    private static final double LENGTH_M = 1.7;
    /** Place of each joint along the path in m and strain at it per degree. */
    private static final Map<Joint, double[]> JOINTS = Map.of(
            Joint.NECK, new double[] {0.05, 0.0002},
            Joint.SPINE, new double[] {0.55, 0.0006},
            Joint.HIP, new double[] {0.75, 0.0010},
            Joint.KNEE, new double[] {1.17, -0.0007},
            Joint.ANKLE, new double[] {1.59, 0.0006});

    private static final Map<Segment, double[]> SEGMENTS = Map.of(
            Segment.CORD, new double[] {0, 0.42},
            Segment.CANAL, new double[] {0.42, 0.55},
            Segment.PELVIS, new double[] {0.55, 0.75},
            Segment.THIGH, new double[] {0.75, 1.17},
            Segment.SHANK, new double[] {1.17, 1.59},
            Segment.FOOT, new double[] {1.59, 1.7});

    private final double[] factors;

    private ChainNerve(double[] factors) {
        this.factors = factors;
    }

    /** Draws whose sensitivity runs evenly from 0.7 to 1.3. */
    public static ChainNerve withDraws(int draws) {
        double[] factors = new double[draws];
        for (int i = 0; i < draws; i++) {
            factors[i] = 0.7 + 0.6 * (i + 0.5) / draws;
        }
        return new ChainNerve(factors);
    }

    @Override
    public int draws() {
        return factors.length;
    }

    /** Distance from the brainstem in m. */
    public static double placeM(Site site) {
        double[] ends = SEGMENTS.getOrDefault(site.segment(), new double[] {0, 0});
        return ends[0] + site.position() * (ends[1] - ends[0]);
    }

    private static double strain(Posture posture, double placeM) {
        double strain = 0;
        for (var joint : JOINTS.entrySet()) {
            double nearness = Math.exp(-Math.abs(placeM - joint.getValue()[0]) / REACH_M);
            strain += posture.angleDeg(joint.getKey()) * joint.getValue()[1] * nearness;
        }
        // The other leg takes a little off, as through the conus.
        return strain - 0.0001 * posture.angleDeg(Joint.HIP, Limb.OTHER) * Math.exp(-placeM / REACH_M);
    }

    private static double glideMm(Posture posture, double placeM) {
        double glide = 0;
        for (var joint : JOINTS.entrySet()) {
            double towards = Math.signum(joint.getValue()[0] - placeM);
            double nearness = Math.exp(-Math.abs(placeM - joint.getValue()[0]) / REACH_M);
            glide += towards * posture.angleDeg(joint.getKey()) * joint.getValue()[1] * 250 * nearness;
        }
        return glide;
    }

    @Override
    public PostureResponse respond(Posture posture) {
        return new PostureResponse() {
            @Override
            public double[] strainAt(Site site) {
                return scaled(strain(posture, placeM(site)));
            }

            @Override
            public double[] glideMmAt(Site site) {
                return scaled(glideMm(posture, placeM(site)));
            }

            @Override
            public double[] meanPositiveStrain(Tract tract) {
                double sum = 0;
                for (int n = 0; n < NODES; n++) {
                    sum += Math.max(0, strain(posture, LENGTH_M * (n + 0.5) / NODES));
                }
                return scaled(sum / NODES);
            }
        };
    }

    private double[] scaled(double value) {
        double[] all = new double[factors.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = value * factors[i];
        }
        return all;
    }
}
