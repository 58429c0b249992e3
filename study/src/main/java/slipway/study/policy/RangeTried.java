package slipway.study.policy;

import slipway.reasoning.response.ladder.HomeDose;
import slipway.study.load.LoadProfile;

/**
 * A range that was tried in the room, and shares of it.
 *
 * @param rung of the study's ladder
 */
record RangeTried(LoadProfile loads, int rung) {
    /**
     * The rung of a share of the tried range: the largest whose load is at most that share of the tried load. (The share
     * is one of angle; load falls at least as fast as the angle below the tried range, so this errs to the careful side.)
     */
    int rungOf(double rangeFraction) {
        return rangeFraction >= 1
                ? rung
                : Math.min(rung, FirstRange.largestBelow(loads, rangeFraction * loads.rungPct()[rung]));
    }

    /** Peak load of a dose. */
    double peakPct(HomeDose dose) {
        return loads.rungPct()[rungOf(dose.rangeFraction())];
    }
}
