package slipway.care.record.chart;

import java.time.Instant;
import tools.jackson.databind.node.ObjectNode;

/**
 * A computed result as kept; it is never changed, a later one stands beside it.
 *
 * @param body the result as JSON
 */
public record ComputedResult(
        String id,
        String episodeId,
        ResultKind kind,
        ResultInputs inputs,
        Stamp stamp,
        ObjectNode body,
        Instant at,
        String by) {
    public ComputedResult {
        body = body.deepCopy();
    }

    /** A copy. */
    @Override
    public ObjectNode body() {
        return body.deepCopy();
    }
}
