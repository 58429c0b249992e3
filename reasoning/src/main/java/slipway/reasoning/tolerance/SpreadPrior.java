package slipway.reasoning.tolerance;

import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Site;

/**
 * How far the sensitivity is spread along the tract, before this person's tests: the spread that makes dorsiflexion
 * shift the onset of a leg raise as published. With strain at the site alone hardly any shift appears at a proximal
 * site; with the mean strain of the tract most of it does.
 */
final class SpreadPrior {
    /** Where healthy people feel a raised leg, as far as a site can stand for it (assumption). */
    private static final Site REFERENCE = Site.get("posterior mid-thigh");

    private SpreadPrior() {}

    /** Log weight of every draw. */
    static double[] logWeights(LoadDraws loads) {
        // The published shift is one of the leg raise: of the front of the leg it says nothing, and every spread is as
        // likely.
        if (loads.draws().sites().stream().anyMatch(site -> site.tract().pathway() == Pathway.FRONT)) {
            return new double[loads.draws().size()];
        }
        double mean = ToleranceData.COEFFICIENTS.value("spread-shift-mean");
        double sd = ToleranceData.COEFFICIENTS.value("spread-shift-sd");
        double[] shiftDeg = shiftDeg(loads);
        double[] log = new double[shiftDeg.length];
        for (int i = 0; i < log.length; i++) {
            double z = (shiftDeg[i] - mean) / sd;
            log[i] = -0.5 * z * z;
        }
        return log;
    }

    /** Degrees of leg raise that dorsiflexion costs in every draw; 0 where a leg raise brings no load. */
    private static double[] shiftDeg(LoadDraws loads) {
        var data = ToleranceData.COEFFICIENTS;
        double lowHip = data.value("spread-hip-low");
        double highHip = data.value("spread-hip-high");
        Posture pointed = Position.get("lying").posture().with(Joint.ANKLE, data.value("spread-ankle-from"));
        double[] low = load(loads, pointed.with(Joint.HIP, lowHip));
        double[] high = load(loads, pointed.with(Joint.HIP, highHip));
        double[] flexed = load(loads, pointed.with(Joint.HIP, lowHip).with(Joint.ANKLE, 0));
        double[] shift = new double[low.length];
        for (int i = 0; i < shift.length; i++) {
            double perDeg = (high[i] - low[i]) / (highHip - lowHip);
            shift[i] = perDeg > 0 ? (flexed[i] - low[i]) / perDeg : 0;
        }
        return shift;
    }

    /** At the draw's own site if that is proximal, else at the mid-thigh. */
    private static double[] load(LoadDraws loads, Posture posture) {
        Draws draws = loads.draws();
        double[] own = loads.rawPct(posture, draws.alpha());
        double[] reference = loads.rawPctAt(REFERENCE, posture, draws.alpha());
        for (int i = 0; i < own.length; i++) {
            if (!ToleranceData.proximal(draws.sites().get(draws.siteOf(i)))) {
                own[i] = reference[i];
            }
        }
        return own;
    }
}
