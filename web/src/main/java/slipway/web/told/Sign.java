package slipway.web.told;

import java.time.Instant;

/**
 * A sign of danger that was told.
 *
 * @param rule id of the rule of the screening
 * @param words the question as it was asked, in English
 * @param emergency whether it is an emergency
 * @param firstAt when it was first told
 * @param takenBack whether the person later gave another answer than yes
 * @param recorded what the screening says now; empty text if nothing
 */
public record Sign(String rule, String words, boolean emergency, Instant firstAt, boolean takenBack, String recorded) {
    /** Whether nobody has answered it in the screening yet. */
    public boolean open() {
        return recorded.isEmpty();
    }

    /** Whether the screening says other than what was told. */
    public boolean contradicted() {
        return !open() && !recorded.equals(Question.YES);
    }
}
