package slipway.reasoning.screening;

import java.util.List;
import java.util.Optional;

/**
 * Result of a screening with its basis.
 *
 * @param level the highest level of the matched rules that stand
 * @param matched all matched rules, cleared ones too, most urgent first
 * @param notAsked ids of required questions that were not answered yes or no
 * @param openPoints what else is needed to judge, in words, for example a weakness without a grade
 * @param actWithin by when to act; empty if nothing matched
 * @param allows what may be done until then
 * @param wells the thrombosis score, if its items were looked at
 */
public record ScreeningResult(
        Level level,
        List<Match> matched,
        List<String> notAsked,
        List<String> openPoints,
        Optional<ActWithin> actWithin,
        Allows allows,
        Optional<Wells.Score> wells) {
    public ScreeningResult {
        matched = List.copyOf(matched);
        notAsked = List.copyOf(notAsked);
        openPoints = List.copyOf(openPoints);
    }

    /** The matched rules that stand. */
    public List<Match> listStanding() {
        return matched.stream().filter(Match::stands).toList();
    }

    /** What the matched rules change in a dose, as names that the dose rules read, each once. */
    public List<String> listDoseLimits() {
        return listStanding().stream()
                .flatMap(match -> match.rule().dose().stream())
                .distinct()
                .toList();
    }

    /** Whether nerve glides are barred, by level or by a rule that allows other care only. */
    public boolean noGlides() {
        return level.blocksPlan() || allows.compareTo(Allows.OTHER_CARE) <= 0;
    }
}
