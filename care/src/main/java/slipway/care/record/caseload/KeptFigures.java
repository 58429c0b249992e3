package slipway.care.record.caseload;

import java.time.Instant;
import tools.jackson.databind.node.ObjectNode;

/**
 * Figures over the episodes of a clinic, as they stood at a time. No names, no ids of people; ids of therapists.
 *
 * @param body what they are, see {@link slipway.care.caseload.CaseloadFigures}
 */
public record KeptFigures(Instant at, ObjectNode body) {
    public KeptFigures {
        body = body.deepCopy();
    }

    /** A copy. */
    @Override
    public ObjectNode body() {
        return body.deepCopy();
    }
}
