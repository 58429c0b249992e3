package slipway.study.report;

import slipway.study.run.Measure;
import slipway.study.run.Tally;
import slipway.study.statistics.Paired;
import slipway.study.statistics.Spread95;

/**
 * One way of dosing in one world, or in several together.
 *
 * @param index of the way in the tally
 */
public record Result(String policy, String world, int index, Tally tally) {
    /** A measure of this way beside that of the main comparator. */
    public Paired paired(Measure measure) {
        return new Paired(
                tally.people(),
                tally.sum(index, measure),
                tally.sum(0, measure),
                tally.square(index, measure),
                tally.square(0, measure),
                tally.cross(index, measure));
    }

    /** The mean of a measure. */
    public Spread95 mean(Measure measure) {
        return paired(measure).mean();
    }

    /** Days from a sign of danger to its answer, over the answered ones; not a number if there were none. */
    public double daysToAnswer() {
        return (double) tally.sum(index, Measure.ALERT_DAYS) / tally.sum(index, Measure.ANSWERED);
    }

    /** Reported signs of danger that were not answered as they must be. */
    public long missedSafety() {
        return tally.sum(index, Measure.MISSED_SAFETY);
    }
}
