package slipway.reasoning.screening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import slipway.reasoning.findings.Vocabulary;
import slipway.reasoning.screening.Trigger.Age;
import slipway.reasoning.screening.Trigger.Cleared;
import slipway.reasoning.screening.Trigger.Cluster;
import slipway.reasoning.screening.Trigger.Question;
import slipway.reasoning.screening.Trigger.Sign;

/** Matches the rules against answers, findings and scores; the highest level wins. */
public final class Screening {
    private final ScreeningRules rules;
    private final SignReader signs = new SignReader(Vocabulary.load());

    /** A screening by these rules. */
    public Screening(ScreeningRules rules) {
        this.rules = rules;
    }

    /** A screening by the rules that ship with the program. */
    public static Screening load() {
        return new Screening(ScreeningRules.load());
    }

    /**
     * The result of a screening.
     *
     * @throws IllegalArgumentException naming every answer and clearance whose rule does not exist
     */
    public ScreeningResult evaluate(ScreeningInput input) {
        refuseUnknown(input);
        Optional<Wells.Score> wells = input.wells().map(rules.wells()::score);
        var matched = new ArrayList<Match>();
        for (ScreeningRule rule : rules.rules()) {
            because(rule, input, wells).ifPresent(text -> matched.add(match(rule, text, input)));
        }
        addClusters(matched, input);
        List<Match> shown = withoutSettledSuspicion(matched, wells);
        addCleared(shown);
        shown.sort(Comparator.comparing((Match match) -> match.rule().level())
                .thenComparing(match -> match.rule().action().actWithin()));
        List<String> notAsked = rules.listRequired(input.region()).stream()
                .map(ScreeningRule::id)
                .filter(id -> input.answers().getOrDefault(id, Answer.UNKNOWN) == Answer.UNKNOWN)
                .toList();
        List<String> open = signs.ungradedKeyMuscles(rules, input.findings());
        return result(shown, notAsked, open, wells);
    }

    private static ScreeningResult result(
            List<Match> matched, List<String> notAsked, List<String> open, Optional<Wells.Score> wells) {
        Level level = notAsked.isEmpty() && open.isEmpty() ? Level.CLEAR : Level.INCOMPLETE;
        Allows allows = Allows.CARE;
        Optional<ActWithin> act = Optional.empty();
        for (Match match : matched) {
            if (match.stands()) {
                ScreeningRule rule = match.rule();
                level = level.or(rule.level());
                allows = allows.or(rule.action().allows());
                ActWithin own = rule.action().actWithin();
                act = Optional.of(act.map(own::or).orElse(own));
            }
        }
        if (level == Level.INCOMPLETE) {
            allows = Allows.NOTHING;
        }
        return new ScreeningResult(level, matched, notAsked, open, act, allows, wells);
    }

    private Optional<String> because(ScreeningRule rule, ScreeningInput input, Optional<Wells.Score> wells) {
        Trigger trigger = rule.trigger();
        if (trigger instanceof Question) {
            boolean yes = input.answers().get(rule.id()) == Answer.YES;
            return yes ? Optional.of("answered yes") : Optional.empty();
        }
        if (trigger instanceof Sign sign) {
            return signs.find(sign, input.findings());
        }
        if (trigger instanceof Age age && input.ageYears().isPresent()) {
            int years = input.ageYears().getAsInt();
            boolean outside = years < age.youngerThan() || years > age.olderThan();
            return outside ? Optional.of("age " + years) : Optional.empty();
        }
        if (trigger instanceof Trigger.Wells wanted) {
            return wells.filter(score -> score.likely() == wanted.likely())
                    .filter(score -> score.likely() || settles(score))
                    .map(score -> "Wells score " + score.points());
        }
        return Optional.empty();
    }

    /** An unlikely thrombosis replaces its suspicion only when every item was looked at. */
    private static boolean settles(Wells.Score score) {
        return !score.likely() && score.notAsked().isEmpty();
    }

    private static List<Match> withoutSettledSuspicion(List<Match> matched, Optional<Wells.Score> wells) {
        boolean settled = wells.map(Screening::settles).orElse(false);
        return new ArrayList<>(matched.stream()
                .filter(match -> !settled || !match.rule().id().equals("dvtSuspected"))
                .toList());
    }

    private void addClusters(List<Match> matched, ScreeningInput input) {
        List<String> ids = matched.stream().map(match -> match.rule().id()).toList();
        for (ScreeningRule rule : rules.rules()) {
            if (rule.trigger() instanceof Cluster cluster) {
                List<String> present =
                        cluster.of().stream().filter(ids::contains).toList();
                if (present.size() >= cluster.atLeast()) {
                    matched.add(match(rule, String.join(" and ", present), input));
                }
            }
        }
    }

    private void addCleared(List<Match> matched) {
        List<String> cleared = matched.stream()
                .filter(match -> !match.stands())
                .map(match -> match.rule().id())
                .toList();
        if (!cleared.isEmpty()) {
            rules.rules().stream()
                    .filter(rule -> rule.trigger() instanceof Cleared)
                    .forEach(rule ->
                            matched.add(new Match(rule, "cleared: " + String.join(", ", cleared), Optional.empty())));
        }
    }

    private static Match match(ScreeningRule rule, String because, ScreeningInput input) {
        Optional<Clearance> clearance = input.clearances().stream()
                .filter(candidate -> candidate.rule().equals(rule.id()))
                .findFirst();
        return new Match(rule, because, clearance);
    }

    private void refuseUnknown(ScreeningInput input) {
        var unknown = new TreeSet<String>();
        for (Map.Entry<String, Answer> answer : input.answers().entrySet()) {
            if (rules.find(answer.getKey()).filter(ScreeningRule::isQuestion).isEmpty()) {
                unknown.add(answer.getKey());
            }
        }
        for (Clearance clearance : input.clearances()) {
            if (rules.find(clearance.rule()).isEmpty()) {
                unknown.add(clearance.rule());
            }
        }
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException("the screening has no question or rule " + String.join(", ", unknown));
        }
    }
}
