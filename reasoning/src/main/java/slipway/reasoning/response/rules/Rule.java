package slipway.reasoning.response.rules;

import java.util.List;

/**
 * One rule.
 *
 * @param id stable
 * @param order place among rules of the same decision, first to be named
 * @param when all must be met; at least one
 * @param fixed whether no setting may change it
 * @param why one sentence for the therapist
 * @param en what the person is told, plain English; blank if nothing
 * @param es the same in Spanish, not yet reviewed by a speaker
 * @param mark {@code seen}, {@code memory}, {@code common practice} or {@code assumption}
 */
public record Rule(
        String id,
        int order,
        Stage stage,
        List<Condition> when,
        Decision decision,
        Asks asks,
        boolean fixed,
        String why,
        String en,
        String es,
        String mark,
        String source) {
    /** When a rule is looked at. */
    public enum Stage {
        /** On the report. */
        REPORT,
        /** On what the rules on the report led to. */
        OUTCOME,
        /** On what the estimate says, where the rules did not ease already. */
        ESTIMATE
    }

    public Rule {
        when = List.copyOf(when);
        if (when.isEmpty()) {
            throw new IllegalArgumentException("rule %s must have a condition".formatted(id));
        }
        if (id.isBlank() || why.isBlank() || mark.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException("rule \"%s\" lacks its sentence, mark or source".formatted(id));
        }
        if (en.isBlank() != es.isBlank()) {
            throw new IllegalArgumentException("rule %s must speak both languages or none".formatted(id));
        }
    }

    /** Whether all its conditions are met. */
    public boolean matches(Facts facts) {
        for (int i = 0; i < when.size(); i++) {
            if (!when.get(i).met(facts)) {
                return false;
            }
        }
        return true;
    }
}
