package slipway.reasoning.response.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What the rules say on one report.
 *
 * @param rules those that matched, the deciding one first; good signs only if the dose does not fall
 * @param asks what they ask for together, of each the more careful
 */
public record Ruling(Decision decision, List<Rule> rules, Asks asks) {
    private static final Comparator<Rule> DECIDING_FIRST =
            Comparator.comparing(Rule::decision).thenComparingInt(Rule::order);

    public Ruling {
        rules = List.copyOf(rules);
        if (rules.isEmpty()) {
            throw new IllegalArgumentException("a ruling needs a rule");
        }
    }

    static Ruling of(List<Rule> matching) {
        var rules = new ArrayList<>(matching);
        rules.sort(DECIDING_FIRST);
        if (!rules.isEmpty() && rules.get(0).decision().eases()) {
            // Whoever has to do less or stop is not told of good signs.
            rules.removeIf(rule -> rule.decision().compareTo(Decision.HOLD) > 0);
        }
        Asks asks = Asks.NOTHING;
        for (Rule rule : rules) {
            asks = asks.and(rule.asks());
        }
        return new Ruling(rules.get(0).decision(), rules, asks);
    }

    /** With more rules. */
    Ruling and(List<Rule> more) {
        if (more.isEmpty()) {
            return this;
        }
        var all = new ArrayList<>(rules);
        all.addAll(more);
        return of(all);
    }

    /** The ids of the rules, the deciding one first. */
    public List<String> ids() {
        return rules.stream().map(Rule::id).toList();
    }
}
