package slipway.care.record.chart;

import tools.jackson.databind.node.ObjectNode;

/**
 * A plan to be kept.
 *
 * @param inputs the case file it was made from, as text
 * @param body the plan as JSON, see {@code slipway schema plan}
 * @param ceilings what the therapist allows at most before the next visit, by exercise id; may be empty
 * @param home what is followed at home, see {@code HomePlan}; empty in plans that were kept before it was
 */
public record PlanDraft(
        String inputs, ResultInputs versions, Stamp stamp, ObjectNode body, ObjectNode ceilings, ObjectNode home) {
    public PlanDraft {
        body = body.deepCopy();
        ceilings = ceilings.deepCopy();
        home = home.deepCopy();
    }

    /** A copy. */
    @Override
    public ObjectNode body() {
        return body.deepCopy();
    }

    /** A copy. */
    @Override
    public ObjectNode ceilings() {
        return ceilings.deepCopy();
    }

    /** A copy. */
    @Override
    public ObjectNode home() {
        return home.deepCopy();
    }
}
