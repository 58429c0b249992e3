package slipway.reasoning.screening;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All rules of the screening, checked together.
 *
 * @param rules in the order of the file
 * @param wells the score for deep-vein thrombosis
 * @param caution the standing caution in English and Spanish
 * @param absence the sentence that absence of signs does not clear, with its number, in English and Spanish
 */
public record ScreeningRules(List<ScreeningRule> rules, Wells wells, Bilingual caution, Bilingual absence) {
    /** A sentence in English and (not yet reviewed) Spanish. */
    public record Bilingual(String en, String es) {}

    private static final ScreeningRules BUNDLED = RulesReader.read("screening/rules.yaml");

    public ScreeningRules {
        rules = List.copyOf(rules);
        var ids = new HashSet<String>();
        for (ScreeningRule rule : rules) {
            if (!ids.add(rule.id())) {
                throw new IllegalArgumentException("the screening has two rules " + rule.id());
            }
        }
        for (ScreeningRule rule : rules) {
            if (rule.trigger() instanceof Trigger.Cluster cluster && !ids.containsAll(cluster.of())) {
                throw new IllegalArgumentException("cluster %s names an unknown rule".formatted(rule.id()));
            }
        }
    }

    /** The rules that ship with the program. */
    public static ScreeningRules load() {
        return BUNDLED;
    }

    /** The rule of this id. */
    public Optional<ScreeningRule> find(String id) {
        return rules.stream().filter(rule -> rule.id().equals(id)).findFirst();
    }

    /** The questions that a case file about this limb must answer: every emergency and urgent one. */
    public List<ScreeningRule> listRequired(Region limb) {
        return rules.stream().filter(rule -> rule.requiredFor(limb)).toList();
    }

    /** All questions about this limb, required or not. */
    public List<ScreeningRule> listQuestions(Region limb) {
        return rules.stream()
                .filter(rule -> rule.trigger() instanceof Trigger.Question question
                        && question.region().concerns(limb))
                .toList();
    }

    /**
     * These rules without some that the clinic switched off.
     *
     * @throws IllegalArgumentException naming every rule that is fixed or unknown
     */
    public ScreeningRules without(Set<String> switchedOff) {
        var refused = new ArrayList<String>();
        for (String id : switchedOff) {
            if (find(id).map(ScreeningRule::fixed).orElse(true)) {
                refused.add(id);
            }
        }
        if (!refused.isEmpty()) {
            throw new IllegalArgumentException("these rules are fixed or unknown and cannot be switched off: "
                    + String.join(", ", refused.stream().sorted().toList()));
        }
        return new ScreeningRules(
                rules.stream().filter(rule -> !switchedOff.contains(rule.id())).toList(), wells, caution, absence);
    }
}
