package slipway.care.record.intake;

import java.time.Instant;
import slipway.exercises.exercise.Language;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a person told before the first visit, never changed.
 *
 * @param linkId the access link by which it came
 * @param whole whether the person said "done"; otherwise it is an early word of a sign of danger
 * @param language in which the questions were read
 * @param answers by the name of the question: a text, or a list of texts
 * @param toldAt when it reached the clinic
 */
public record Intake(
        String id,
        String episodeId,
        String linkId,
        boolean whole,
        Language language,
        ObjectNode answers,
        Instant toldAt) {
    /** Longest text of all answers together, in characters of JSON; a person who writes a lot stays far below. */
    public static final int MAX_CHARACTERS = 60_000;

    /** What the kind of an alert begins with that was raised by an intake. */
    public static final String ALERT = "intake-";

    public Intake {
        answers = answers.deepCopy();
        int length = answers.toString().length();
        if (length > MAX_CHARACTERS) {
            throw new IllegalArgumentException(
                    "answers must have at most %d characters, had %d".formatted(MAX_CHARACTERS, length));
        }
    }

    /** A copy. */
    @Override
    public ObjectNode answers() {
        return answers.deepCopy();
    }

    /** Ids only: this may end in a log. */
    @Override
    public String toString() {
        return "intake %s of episode %s".formatted(id, episodeId);
    }
}
