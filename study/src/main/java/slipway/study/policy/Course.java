package slipway.study.policy;

import slipway.study.person.Told;

/** One person under one way of dosing. Not thread-safe. */
public interface Course {
    /** What is asked today. */
    Asked today(int day);

    /** A report arrives, on its own day where reports are read daily, at the next visit elsewhere. */
    Answer heard(Told told);

    /**
     * A visit.
     *
     * @param onsetRaiseDeg leg raise at which the symptom begins today, measured with error
     */
    void visit(int day, double onsetRaiseDeg, Room room);

    /** The therapist has examined after a report of danger and lets the exercises go on. */
    default void released(int day) {}
}
