package slipway.reasoning;

import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;

/**
 * The simplest nerve: one draw; 0.1 % of strain and 0.2 mm of glide per degree of hip flexion everywhere, so that every
 * result can be worked out by hand.
 */
public final class HipOnlyNerve implements NerveModel {
    public static final double PCT_PER_DEG = 0.1;
    public static final double MM_PER_DEG = 0.2;

    @Override
    public int draws() {
        return 1;
    }

    @Override
    public PostureResponse respond(Posture posture) {
        double hipDeg = posture.angleDeg(Joint.HIP);
        return new PostureResponse() {
            @Override
            public double[] strainAt(Site site) {
                return new double[] {hipDeg * PCT_PER_DEG / 100};
            }

            @Override
            public double[] glideMmAt(Site site) {
                return new double[] {hipDeg * MM_PER_DEG};
            }

            @Override
            public double[] meanPositiveStrain(Tract tract) {
                return new double[] {Math.max(0, hipDeg) * PCT_PER_DEG / 100};
            }
        };
    }
}
