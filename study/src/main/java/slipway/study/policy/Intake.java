package slipway.study.policy;

import slipway.reasoning.irritability.Irritability;
import slipway.study.load.LoadProfile;

/**
 * What is known of a person on the first day.
 *
 * @param loads as the nerve model has them for such a body and place, medians
 * @param onsetRaiseDeg leg raise at which the symptom began, measured with error
 * @param irritability as judged
 * @param usualSymptom usual symptom, 0 to 10
 * @param seed for whoever needs random numbers of its own
 */
public record Intake(LoadProfile loads, double onsetRaiseDeg, Irritability irritability, int usualSymptom, long seed) {
    /** The load at the measured onset. */
    public double onsetLoadPct() {
        return loads.atRaise(onsetRaiseDeg);
    }
}
