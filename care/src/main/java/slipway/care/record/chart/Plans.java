package slipway.care.record.chart;

import java.util.List;
import java.util.Optional;
import slipway.care.record.Saving;

/** The versions of the plan of an episode. */
public interface Plans {
    /** Keeps a plan as the next version, proposed. */
    PlanVersion add(PlanDraft plan);

    Optional<PlanVersion> find(int number);

    Optional<PlanVersion> newest();

    /** What the person has at home. */
    Optional<PlanVersion> released();

    /** Newest first. */
    List<PlanVersion> list();

    /**
     * Moves a version on. Releasing one replaces the one released before, in the same transaction.
     *
     * @param from where it stood when it was read
     * @throws IllegalArgumentException if it cannot go there from {@code from}, see {@link PlanState#next()}
     */
    Saving<PlanVersion> move(int number, PlanState from, PlanState to);
}
