package slipway.reasoning.plan;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.screening.ActWithin;
import slipway.reasoning.screening.ScreeningResult;

/**
 * What the screening said.
 *
 * @param level emergency, urgent, incomplete, caution or clear
 * @param actWithin by when to act; left out of the JSON if nothing matched
 * @param allows what may be done until then
 * @param notAsked required questions without a yes or no
 * @param open what else is needed to judge
 * @param rules the rules that matched, most urgent first; cleared ones too
 */
public record ScreeningSummary(
        String level,
        @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<String> actWithin,
        String allows,
        List<String> notAsked,
        List<String> open,
        List<MatchedRule> rules) {
    public ScreeningSummary {
        notAsked = List.copyOf(notAsked);
        open = List.copyOf(open);
        rules = List.copyOf(rules);
    }

    /** The summary of a screening. */
    public static ScreeningSummary of(ScreeningResult result) {
        return new ScreeningSummary(
                result.level().key(),
                result.actWithin().map(ActWithin::key),
                result.allows().key(),
                result.notAsked(),
                result.openPoints(),
                result.matched().stream().map(MatchedRule::of).toList());
    }

    /** Why no exercise may be planned; empty if one may. */
    static Optional<Reason> blocked(ScreeningResult result) {
        if (!result.noGlides()) {
            return Optional.empty();
        }
        String because = result.listStanding().stream()
                .map(match -> " " + match.rule().words().tellEn())
                .findFirst()
                .orElse("");
        return Optional.of(Reason.finding(
                "screening.blocked",
                "The screening is %s and allows no glides before it is resolved.%s"
                        .formatted(result.level().key(), because)));
    }

    /** Plain words of the rules that stand. */
    static List<String> words(ScreeningResult result) {
        return result.listStanding().stream()
                .map(match -> match.rule().words().tellEn())
                .toList();
    }
}
