package slipway.study.load;

import java.io.Serializable;

/**
 * Loads of one nerve in percent of strain above the rest posture.
 *
 * @param rungPct the largest load on the way of each rung, in the order of the ladder
 * @param raisePct load of the leg raise at even steps from 0 deg
 * @param raiseStepDeg distance of these steps
 */
public record LoadProfile(double[] rungPct, double[] raisePct, double raiseStepDeg) implements Serializable {
    private static final long serialVersionUID = 1L;

    public LoadProfile {
        if (rungPct.length == 0 || raisePct.length < 2 || !(raiseStepDeg > 0)) {
            throw new IllegalArgumentException("a profile needs rungs and at least two steps of the leg raise");
        }
        for (double load : rungPct) {
            if (!(load >= 0)) {
                throw new IllegalArgumentException("the load of a rung must be 0 or more, was " + load);
            }
        }
    }

    /** Number of rungs. */
    public int rungs() {
        return rungPct.length;
    }

    /** The load of a leg raise; beyond the table it goes on as in its last step. */
    public double atRaise(double raiseDeg) {
        int last = raisePct.length - 1;
        int step = Math.max(0, Math.min(last - 1, (int) (raiseDeg / raiseStepDeg)));
        double share = raiseDeg / raiseStepDeg - step;
        return raisePct[step] + share * (raisePct[step + 1] - raisePct[step]);
    }

    /** The leg raise at which a load is reached, deg; the end of the table if it never is. */
    public double raiseAt(double loadPct) {
        for (int step = 1; step < raisePct.length; step++) {
            if (raisePct[step] >= loadPct && raisePct[step] > raisePct[step - 1]) {
                double share = (loadPct - raisePct[step - 1]) / (raisePct[step] - raisePct[step - 1]);
                return raiseStepDeg * (step - 1 + Math.max(0, share));
            }
        }
        return raiseStepDeg * (raisePct.length - 1);
    }
}
