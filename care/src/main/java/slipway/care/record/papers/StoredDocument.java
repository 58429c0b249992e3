package slipway.care.record.papers;

import java.time.Instant;
import java.util.OptionalInt;

/**
 * A document without its bytes.
 *
 * @param kind for example {@code sheet}, {@code letter}, {@code upload}
 * @param sha256 of its bytes, in hexadecimal
 * @param planVersion the plan it shows
 */
public record StoredDocument(
        String id,
        String episodeId,
        String kind,
        String mediaType,
        int size,
        String sha256,
        OptionalInt planVersion,
        Instant at,
        String by) {}
