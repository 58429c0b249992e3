package slipway.reasoning.deadlines;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A paper that is due.
 *
 * @param due last day; empty if it hangs on treatment days that are not known yet
 * @param treatmentDay number of the treatment day by which it is due, the evaluation being 1
 * @param text what is due and why, in one sentence
 */
public record Deadline(Kind kind, Optional<LocalDate> due, OptionalInt treatmentDay, State state, String text) {
    /** What is due. */
    public enum Kind {
        CERTIFICATION,
        RECERTIFICATION,
        PROGRESS_REPORT
    }

    /** Where it stands. */
    public enum State {
        DONE,
        DONE_LATE,
        OPEN,
        OVERDUE
    }
}
