package slipway.reasoning.plan;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Optional;
import slipway.reasoning.screening.Clearance;
import slipway.reasoning.screening.Match;

/**
 * A screening rule that matched.
 *
 * @param because the answer, finding or score that made it match
 * @param text what it means, in plain words
 * @param cleared a clinician's record that it was looked into; left out of the JSON if there is none
 */
public record MatchedRule(
        String id,
        String level,
        String because,
        String text,
        String source,
        String mark,
        @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Cleared> cleared) {

    /**
     * Who released a rule.
     *
     * @param when date as year-month-day
     */
    public record Cleared(String who, String when, String outcome) {
        static Cleared of(Clearance clearance) {
            return new Cleared(clearance.who(), clearance.when().toString(), clearance.outcome());
        }
    }

    static MatchedRule of(Match match) {
        var rule = match.rule();
        return new MatchedRule(
                rule.id(),
                rule.level().key(),
                match.because(),
                rule.words().tellEn(),
                rule.basis().source(),
                rule.basis().mark(),
                match.clearance().map(Cleared::of));
    }
}
