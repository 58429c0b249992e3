package slipway.care.record.chart;

import tools.jackson.databind.node.ObjectNode;

/**
 * A plan to be kept.
 *
 * @param inputs the case file it was made from, as text
 * @param body the plan as JSON, see {@code slipway schema plan}
 * @param ceilings what the therapist allows at most before the next visit, by exercise id; may be empty
 */
public record PlanDraft(String inputs, ResultInputs versions, Stamp stamp, ObjectNode body, ObjectNode ceilings) {
    public PlanDraft {
        body = body.deepCopy();
        ceilings = ceilings.deepCopy();
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
}
