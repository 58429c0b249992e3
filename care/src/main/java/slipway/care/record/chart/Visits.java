package slipway.care.record.chart;

import java.util.List;
import java.util.Optional;
import slipway.care.record.Saving;

/** The visits of an episode and what was tried in them. */
public interface Visits {
    /** In the order of their numbers. */
    List<VisitRecord> list();

    /** The visit that has started and not ended, if there is one. */
    Optional<VisitRecord> current();

    /** Starts the next visit, now, by whoever opened the chart. */
    VisitRecord start();

    /** Ends a visit, now. */
    Saving<VisitRecord> end(String visitId, long version);

    /** Writes down a supervised try in a visit. */
    SupervisedTry addTry(String visitId, int planVersion, TryEntry entry);

    /** All tries, oldest first. */
    List<SupervisedTry> tries();
}
