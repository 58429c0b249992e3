package slipway.reasoning.response.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.basis.Quantity;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.course.Ruled;
import slipway.reasoning.response.estimate.EstimateSettings;
import slipway.reasoning.response.rules.Condition;
import slipway.reasoning.response.rules.Decision;
import slipway.reasoning.response.rules.Fact;
import slipway.reasoning.response.rules.Facts;
import slipway.reasoning.response.rules.Rule;

/** Why a report was answered as it was: the rules that matched with their numbers, why not more, why not less. */
final class Explanation {
    private static final Map<String, String> STEP_WORDS = ReasoningData.table("response/step-words.csv").stream()
            .collect(Collectors.toUnmodifiableMap(row -> row.get("fact"), (CSVRecord row) -> row.get("words")));

    private Explanation() {}

    static List<Reason> of(Ruled ruled, Course moved, Optional<Outlook> outlook) {
        var reasons = new ArrayList<Reason>();
        for (Rule rule : ruled.ruling().rules()) {
            reasons.add(byRule(rule, ruled.facts()));
        }
        reasons.add(notMore(ruled, moved, outlook));
        reasons.add(notLess(ruled, moved, outlook));
        return reasons;
    }

    private static Reason byRule(Rule rule, Facts facts) {
        var numbers = new ArrayList<Quantity>();
        for (Condition condition : rule.when()) {
            Fact fact = condition.fact();
            double value = facts.get(fact);
            if (Double.isFinite(value)) {
                numbers.add(new Quantity(fact.key(), value, fact.unit()));
            }
            numbers.add(new Quantity(condition.toString(), condition.threshold(), fact.unit()));
        }
        return new Reason(rule.id(), rule.why(), numbers, rule.source(), rule.mark());
    }

    private static Reason notMore(Ruled ruled, Course moved, Optional<Outlook> outlook) {
        Decision decision = ruled.ruling().decision();
        String text;
        if (decision.stops()) {
            text = "Not more: it is stopped until a clinician releases it.";
        } else if (decision.eases()) {
            text = "Not more: " + lowerFirst(ruled.ruling().rules().get(0).why());
        } else if (decision == Decision.STEP_UP) {
            text = "Not more: one step at a time, at most two in 7 days.";
        } else if (ruled.facts().get(Fact.STEP_ALLOWED) == 1) {
            text = "Not more: the rules allow a step, the estimate does not.";
        } else {
            text = "Not more: a step up still needs %s.".formatted(lacking(ruled));
        }
        Reason reason = Reason.practice("respond.not-more", text);
        boolean higher = !decision.stops() && moved.rung() < moved.ladder().top();
        return higher && outlook.isPresent()
                ? withChance(reason, "excess chance one rung up", outlook.get().excess(moved.rung() + 1))
                : reason;
    }

    private static String lacking(Ruled ruled) {
        // At the ceiling nothing else matters.
        boolean atCeiling = ruled.facts().get(Fact.BELOW_CEILING) == 0;
        String all = ruled.lackingForStep().stream()
                .filter(condition -> !atCeiling || condition.fact() == Fact.BELOW_CEILING)
                .map(condition -> words(condition, ruled.facts().get(condition.fact())))
                .collect(Collectors.joining(", "));
        return all.isEmpty() ? "a report that speaks for it" : all;
    }

    private static String words(Condition condition, double value) {
        String words = STEP_WORDS.getOrDefault(condition.fact().key(), condition.toString());
        String now = Double.isNaN(value)
                ? "not told"
                : Double.isInfinite(value)
                        ? "not settled"
                        : value == Math.rint(value)
                                ? Long.toString((long) value)
                                : String.format(Locale.ROOT, "%.1f", value);
        return words.formatted(now);
    }

    private static Reason notLess(Ruled ruled, Course moved, Optional<Outlook> outlook) {
        Decision decision = ruled.ruling().decision();
        int down = ruled.course().rung() - moved.rung();
        String text;
        if (decision.stops()) {
            text = "Not less: nothing is done until then.";
        } else if (decision.eases()) {
            text = down > 0
                    ? "Not less: %d %s down is what the rules ask for.".formatted(down, down == 1 ? "rung" : "rungs")
                    : "Not less: the dose has already come down since that session.";
        } else {
            text = "Not less: no rule asks for it.";
        }
        Reason reason = Reason.practice("respond.not-less", text);
        return !decision.stops() && outlook.isPresent()
                ? withChance(reason, "excess chance at this dose", outlook.get().excess(moved.rung()))
                        .with("effective particles", outlook.get().effective(), "")
                : reason;
    }

    private static Reason withChance(Reason reason, String name, double chance) {
        return reason.with(name, chance, "probability").with("limit", EstimateSettings.LIMIT, "probability");
    }

    private static String lowerFirst(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }
}
