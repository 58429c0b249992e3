package slipway.care.record.draft;

import java.time.Instant;

/**
 * What a user has typed into a form and not yet saved.
 *
 * @param form which form, 1 to 60 small letters, digits, hyphens or slashes; the key of a section for its own form
 * @param baseVersion version of the record that the form was opened on; 0 if there was none
 * @param content as the form sent it, at most {@link #MAX_CONTENT} characters
 */
public record Draft(String userId, String episodeId, String form, long baseVersion, String content, Instant at) {
    /** Longest content; a form of an episode stays far below. */
    public static final int MAX_CONTENT = 200_000;

    public Draft {
        if (!form.matches("[a-z0-9/-]{1,60}")) {
            throw new IllegalArgumentException("form must be 1 to 60 small letters, digits, hyphens or slashes");
        }
        if (baseVersion < 0) {
            throw new IllegalArgumentException("base version must be 0 or more, was " + baseVersion);
        }
        if (content.length() > MAX_CONTENT) {
            throw new IllegalArgumentException(
                    "a draft must have at most %d characters, had %d".formatted(MAX_CONTENT, content.length()));
        }
    }

    /** Says nothing of the content: this may end in a log. */
    @Override
    public String toString() {
        return "draft of %s in episode %s".formatted(form, episodeId);
    }
}
