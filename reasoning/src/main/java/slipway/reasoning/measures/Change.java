package slipway.reasoning.measures;

import java.util.List;
import slipway.reasoning.basis.Reason;

/**
 * What a change of a score is worth.
 *
 * @param gain positive if better, points of the measure
 * @param reasons what it rests on: the published error, the published importance, or that there is none
 */
public record Change(String measureId, double from, double to, double gain, Kind kind, List<Reason> reasons) {
    public Change {
        reasons = List.copyOf(reasons);
        if (!Double.isFinite(gain) || reasons.isEmpty()) {
            throw new IllegalArgumentException("a change needs a finite gain and a reason, was " + gain);
        }
    }

    /** How much a change says. */
    public enum Kind {
        WITHIN_ERROR("within error"),
        REAL("real"),
        IMPORTANT("important"),
        /** No published error to hold it against. */
        NOT_KNOWN("not known");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** Whether it is more than the error of the measure. */
        public boolean beyondError() {
            return this == REAL || this == IMPORTANT;
        }
    }

    /** Change as a share of the start, positive if better; {@code NaN} never: 0 if the start is 0. */
    public double share() {
        return from == 0 ? 0 : gain / Math.abs(from);
    }

    /** Whether the person is better by more than error. */
    public boolean better() {
        return kind.beyondError() && gain > 0;
    }

    /** Whether the person is worse by more than error. */
    public boolean worse() {
        return kind.beyondError() && gain < 0;
    }
}
