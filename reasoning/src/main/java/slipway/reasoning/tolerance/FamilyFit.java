package slipway.reasoning.tolerance;

import java.util.Arrays;
import java.util.List;

/**
 * The tolerance in one family of tests, in every draw. Within a draw the onsets are independent normal readings of one
 * tolerance, which before them is even over the angles of onset; so a single test favours no draw, and two tests favour
 * the draws in which they agree. What was borne without symptom cuts the tolerance off from below.
 */
final class FamilyFit {
    private final List<TestLoad> onsets;
    private final List<LowerBound> bounds;
    private final double[] meanPct;
    private final double[] sdPct;
    private final double[] tolerancePct;
    private final double[] logEvidence;

    FamilyFit(List<TestLoad> onsets, List<LowerBound> bounds, double[] uniform) {
        this.onsets = List.copyOf(onsets);
        this.bounds = List.copyOf(bounds);
        int size = uniform.length;
        meanPct = new double[size];
        sdPct = new double[size];
        tolerancePct = new double[size];
        logEvidence = new double[size];
        for (int i = 0; i < size; i++) {
            if (onsets.isEmpty()) {
                tolerancePct[i] = lowestPct(i);
            } else {
                fit(i, uniform[i]);
            }
        }
    }

    private void fit(int i, double uniform) {
        double precision = 0;
        double weighted = 0;
        for (TestLoad onset : onsets) {
            double p = 1 / (onset.errorPct(i) * onset.errorPct(i));
            precision += p;
            weighted += p * onset.centrePct(i);
        }
        meanPct[i] = weighted / precision;
        sdPct[i] = 1 / Math.sqrt(precision);
        double lowest = lowestPct(i);
        logEvidence[i] = logAgreement(i) + Gauss.logSurvival((lowest - meanPct[i]) / sdPct[i]);
        tolerancePct[i] = Gauss.cutQuantile(meanPct[i], sdPct[i], lowest, uniform);
    }

    /** log of ∫ Π N(τ; load, error) dτ × Π perDeg^(1 − 1/n), up to a constant; 0 for a single test. */
    private double logAgreement(int i) {
        int n = onsets.size();
        double log = Math.log(sdPct[i]);
        for (TestLoad onset : onsets) {
            double z = (onset.centrePct(i) - meanPct[i]) / onset.errorPct(i);
            log += -0.5 * z * z - Math.log(onset.errorPct(i)) + (1 - 1.0 / n) * Math.log(onset.perDeg(i));
        }
        return log;
    }

    /** What was borne at least; 0, the load at rest, if nothing else. */
    private double lowestPct(int i) {
        double lowest = 0;
        for (LowerBound bound : bounds) {
            lowest = Math.max(lowest, bound.loadPct(i));
        }
        return lowest;
    }

    boolean lowerBoundOnly() {
        return onsets.isEmpty();
    }

    List<TestLoad> onsets() {
        return onsets;
    }

    List<LowerBound> bounds() {
        return bounds;
    }

    double[] logEvidence() {
        return logEvidence;
    }

    double[] tolerancePct() {
        return tolerancePct;
    }

    /** How well a bound of the other family fits the tolerance measured here: it may be misjudged by a share of its load. */
    double[] logEvidenceOfOtherFamily(LowerBound bound) {
        double share = ToleranceData.COEFFICIENTS.value("between-families-sd");
        double[] log = new double[meanPct.length];
        for (int i = 0; i < log.length; i++) {
            double sd = Math.hypot(sdPct[i], share * bound.loadPct(i));
            log[i] = Gauss.logSurvival((bound.loadPct(i) - meanPct[i]) / sd);
        }
        return log;
    }

    /** Standard errors by which a bound lies above the tolerance that the onsets give, in every draw. */
    double[] excess(LowerBound bound) {
        double[] z = new double[meanPct.length];
        Arrays.setAll(z, i -> (bound.loadPct(i) - meanPct[i]) / sdPct[i]);
        return z;
    }

    /** Standard errors between two onsets in every draw, positive where the first asks for more tolerance. */
    static double[] difference(TestLoad first, TestLoad second) {
        double[] z = new double[first.centresPct().length];
        Arrays.setAll(
                z, i -> (first.centrePct(i) - second.centrePct(i)) / Math.hypot(first.errorPct(i), second.errorPct(i)));
        return z;
    }
}
