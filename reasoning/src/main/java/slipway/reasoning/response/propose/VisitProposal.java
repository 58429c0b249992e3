package slipway.reasoning.response.propose;

import java.util.List;
import java.util.OptionalDouble;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;

/**
 * What to set at a visit for one exercise, for the therapist to take, change or refuse.
 *
 * @param dose at the whole range, which is tried in the room first
 * @param ceiling the most that may be reached before the next visit
 * @param candidates every dose that was looked at, the least first
 * @param reasons what was reported since, why not more, why not less
 */
public record VisitProposal(
        String exercise,
        Since since,
        HomeDose dose,
        Ceiling ceiling,
        List<Candidate> candidates,
        List<Reason> reasons) {
    public VisitProposal {
        candidates = List.copyOf(candidates);
        reasons = List.copyOf(reasons);
    }

    /**
     * How it went since the dose was set.
     *
     * @param given what was set then
     * @param now what is in force, after the answers to the reports
     * @param ceiling what was allowed at most
     * @param rests whether the exercise rests until the therapist has looked at it: a dose that is set lets it go on
     * @param sessions that were reported, days of rest left out
     * @param flares those of them that were a flare
     */
    public record Since(HomeDose given, HomeDose now, Ceiling ceiling, boolean rests, int sessions, int flares) {
        public Since {
            if (sessions < 0 || flares < 0 || flares > sessions) {
                throw new IllegalArgumentException("%d of %d sessions cannot flare".formatted(flares, sessions));
            }
        }

        /** Whether anything was reported; without it there is nothing to propose on. */
        public boolean reported() {
            return sessions > 0;
        }
    }

    /**
     * A dose that was looked at.
     *
     * @param excess chance beyond rest of at least one flare in the 7 days after, other exercises as they are; empty
     *     without an estimate
     * @param allowed whether that is within the limit; always without an estimate
     */
    public record Candidate(HomeDose dose, OptionalDouble excess, boolean allowed) {}
}
