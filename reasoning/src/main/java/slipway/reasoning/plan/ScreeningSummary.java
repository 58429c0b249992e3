package slipway.reasoning.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.screening.Match;
import slipway.reasoning.screening.ScreeningResult;

/**
 * What the screening said.
 *
 * @param level emergency, urgent, incomplete, caution or clear
 * @param rules the rules that stand, most urgent first, then what is still open
 */
public record ScreeningSummary(String level, List<Reason> rules) {
    public ScreeningSummary {
        rules = List.copyOf(rules);
    }

    static ScreeningSummary of(ScreeningResult result) {
        var rules = new ArrayList<Reason>();
        result.listStanding().forEach(match -> rules.add(reason(match)));
        result.notAsked()
                .forEach(id -> rules.add(Reason.finding(
                        "screening.not-asked", "The question \"%s\" is not answered yes or no.".formatted(id))));
        result.openPoints().forEach(point -> rules.add(Reason.finding("screening.open", "Still open: " + point + ".")));
        return new ScreeningSummary(result.level().key(), rules);
    }

    private static Reason reason(Match match) {
        String text = "%s (%s)".formatted(match.rule().words().tellEn(), match.because());
        var basis = match.rule().basis();
        return new Reason("screening." + match.rule().id(), text, List.of(), basis.source(), word(basis.mark()));
    }

    private static String word(String mark) {
        return switch (mark) {
            case "S" -> "seen";
            case "M" -> "memory";
            default -> mark;
        };
    }

    /** Why no exercise may be planned; empty if one may. */
    Optional<Reason> blocked(ScreeningResult result) {
        if (!result.noGlides()) {
            return Optional.empty();
        }
        String because = rules.isEmpty() ? "" : " " + rules.get(0).text();
        return Optional.of(Reason.finding(
                "screening.blocked",
                "The screening is %s and allows no glides before it is resolved.%s".formatted(level, because)));
    }
}
