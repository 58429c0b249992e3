package slipway.reasoning.course;

import slipway.reasoning.basis.Reason;

/**
 * Something that the week of care asks for. The therapist decides.
 *
 * @param week of care from which it holds
 */
public record Milestone(int week, Action action, Reason reason) {
    /** What is proposed. */
    public enum Action {
        MEASURE("measure again: without a score nothing can be judged"),
        EXAMINE_AGAIN("examine again, locate again, change the approach"),
        OPINION("get a medical or spinal opinion"),
        END_OR_REFER("discharge, taper or refer");

        private final String words;

        Action(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
