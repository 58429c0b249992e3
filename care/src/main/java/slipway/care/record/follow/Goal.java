package slipway.care.record.follow;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/**
 * A goal of the person.
 *
 * @param words the goal in words
 * @param measureId the measure that tells whether it is reached
 * @param target measure, baseline and target value as JSON; may be empty
 * @param state {@code open}, {@code reached}, {@code dropped}
 */
public record Goal(
        String id,
        String episodeId,
        String words,
        Optional<String> measureId,
        ObjectNode target,
        Optional<LocalDate> due,
        String state,
        long version,
        Instant changedAt,
        String changedBy) {
    public Goal {
        checkedState(state);
        target = target.deepCopy();
    }

    /** A copy. */
    @Override
    public ObjectNode target() {
        return target.deepCopy();
    }

    static void checkedState(String state) {
        if (!state.equals("open") && !state.equals("reached") && !state.equals("dropped")) {
            throw new IllegalArgumentException("state of a goal must be open, reached or dropped");
        }
    }
}
