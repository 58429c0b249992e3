package slipway.reasoning.response.propose;

import java.util.List;
import java.util.Optional;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.response.rules.Contact;
import slipway.reasoning.response.rules.Decision;
import slipway.reasoning.tolerance.Interval;

/**
 * The answer to one report. The names of the components are the keys of the JSON.
 *
 * @param rules ids of the rules that matched, the deciding one first
 * @param excessFlareChance excess over rest of the chance of at least one flare in the 7 days after, with the doses then
 *     in force; empty without an estimate or when everything is stopped
 * @param nextDose empty when the exercise is stopped
 * @param contact who has to speak with whom
 * @param reasons the deciding sentence first, then why not more and why not less
 */
public record RespondResult(
        String checkinId,
        Decision decision,
        List<String> rules,
        Optional<Interval> excessFlareChance,
        Optional<NextDose> nextDose,
        CeilingView ceiling,
        Contact contact,
        List<Reason> reasons) {
    public RespondResult {
        rules = List.copyOf(rules);
        reasons = List.copyOf(reasons);
    }
}
