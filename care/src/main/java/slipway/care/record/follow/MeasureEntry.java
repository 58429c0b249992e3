package slipway.care.record.follow;

import java.time.Instant;
import java.time.LocalDate;
import tools.jackson.databind.node.ObjectNode;

/**
 * An outcome measure as it was taken; never changed, a correction is a later entry that names the one it replaces.
 *
 * @param measureId which measure
 * @param day when it was taken
 * @param body items and total as JSON
 * @param replaces id of the entry that it corrects; empty text if none
 */
public record MeasureEntry(
        String id,
        String episodeId,
        String measureId,
        LocalDate day,
        ObjectNode body,
        String replaces,
        Instant at,
        String by) {
    public MeasureEntry {
        body = body.deepCopy();
    }

    /** A copy. */
    @Override
    public ObjectNode body() {
        return body.deepCopy();
    }
}
