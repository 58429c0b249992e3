package slipway.care.record.papers;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A note or letter: a draft that is edited, or signed and fixed.
 *
 * @param kind for example {@code evaluation}, {@code visit-note}, {@code progress-report}, {@code discharge}
 * @param text the whole text in the form its maker uses
 * @param signature there once it is signed; the text is fixed from then on
 * @param addenda what was added afterwards, oldest first
 */
public record Paper(
        String id,
        String episodeId,
        String kind,
        Optional<String> visitId,
        String text,
        long version,
        Instant changedAt,
        String changedBy,
        Optional<Signature> signature,
        List<Addendum> addenda) {
    public Paper {
        addenda = List.copyOf(addenda);
    }

    /**
     * A signature.
     *
     * @param sha256 of the text in UTF-8, in hexadecimal
     */
    public record Signature(String by, Instant at, String sha256) {}

    /**
     * The text as it was in a version.
     *
     * @param text in the form its maker uses
     * @param by who wrote this version
     */
    public record Text(long version, String text, Instant at, String by) {}

    /** Something added to a signed paper; signed with its writing. */
    public record Addendum(int number, String text, Signature signature) {}
}
