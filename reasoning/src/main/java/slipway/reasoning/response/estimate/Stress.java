package slipway.reasoning.response.estimate;

import slipway.reasoning.response.ladder.HomeDose;

/** What a dose asks of the nerve, as one number. */
public final class Stress {
    private static final double USUAL_REPETITIONS = FilterModel.DATA.value("usual-repetitions");
    private static final double REPETITION_EXPONENT = FilterModel.DATA.value("repetition-exponent");
    private static final double SESSION_EXPONENT = FilterModel.DATA.value("session-exponent");
    private static final double LEAST_LOAD = 1e-3;

    private Stress() {}

    /**
     * Log of the load that a session counts for: its peak, more with more repetitions and more sessions a day.
     *
     * @param peakLoad largest load of a repetition above rest, in the unit of the prior; what is not above rest counts
     *     as none
     */
    public static double log(double peakLoad, HomeDose dose) {
        if (!Double.isFinite(peakLoad)) {
            throw new IllegalArgumentException("a peak load must be finite, was " + peakLoad);
        }
        return Math.log(Math.max(LEAST_LOAD, peakLoad))
                + REPETITION_EXPONENT * Math.log(dose.repetitions() * dose.sets() / USUAL_REPETITIONS)
                + SESSION_EXPONENT * Math.log(dose.sessionsPerDay());
    }
}
