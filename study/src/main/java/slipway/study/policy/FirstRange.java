package slipway.study.policy;

import slipway.reasoning.irritability.Irritability;
import slipway.study.data.Settings;
import slipway.study.load.LoadProfile;

/**
 * What every therapist of the study does alike: a range short of symptoms by the rule of common practice (0.6, 0.8 or 0.95
 * of the load at the measured onset by irritability), tried in the room first, less where the try does not go well.
 */
final class FirstRange {
    private static final Settings CARE = Settings.load("care.csv");
    private static final int TRIES = CARE.count("tries");

    private FirstRange() {}

    /** The largest rung whose load stays below a share of the load at the onset; the lowest if none does. */
    static int shortOfSymptoms(LoadProfile loads, double onsetRaiseDeg, Irritability irritability) {
        double share = StartDose.of(irritability).fraction();
        return largestBelow(loads, share * loads.atRaise(onsetRaiseDeg));
    }

    /** The largest rung with at most this load. */
    static int largestBelow(LoadProfile loads, double loadPct) {
        int rung = 0;
        while (rung + 1 < loads.rungs() && loads.rungPct()[rung + 1] <= loadPct) {
            rung++;
        }
        return rung;
    }

    /** The first rung from this one downwards that goes well in the room; one below the last try if none does. */
    static int tried(int rung, int repetitions, Room room) {
        int candidate = rung;
        for (int i = 0; i < TRIES && candidate > 0; i++) {
            if (room.tried(candidate, repetitions)) {
                return candidate;
            }
            candidate--;
        }
        return candidate;
    }
}
