package slipway.care.record.trail;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;

/**
 * The form of a trail entry that its digest is taken over, version 1: the fields in the order of {@link #digest}, each
 * as its length in bytes of UTF-8 in decimal, a colon, the bytes, and a line feed. Lengths make the form free of
 * ambiguity whatever the fields hold. Instants are microseconds since 1970-01-01T00:00:00Z in decimal.
 */
public final class TrailForm {
    /** What stands for the digest before the first entry. */
    public static final String START = "0".repeat(64);

    /** The payload digest of an entry without payload. */
    public static final String NO_PAYLOAD = sha256("");

    private static final String FORM = "slipway-trail-1";

    private TrailForm() {}

    /** The digest of an entry, in hexadecimal; its own {@link TrailEntry#digest()} does not enter. */
    public static String digest(TrailEntry entry) {
        var text = new StringBuilder();
        for (String field : List.of(
                FORM,
                entry.chain().kind().name(),
                entry.chain().id(),
                Long.toString(entry.seq()),
                Long.toString(micros(entry.at())),
                entry.who(),
                entry.role(),
                entry.action().name(),
                entry.entity(),
                entry.entityId(),
                Long.toString(entry.version()),
                entry.payloadDigest(),
                entry.previousDigest())) {
            text.append(field.getBytes(StandardCharsets.UTF_8).length)
                    .append(':')
                    .append(field)
                    .append('\n');
        }
        return sha256(text.toString());
    }

    /** SHA-256 of a text in UTF-8, in hexadecimal. */
    public static String sha256(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    /** SHA-256 in hexadecimal. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static long micros(Instant at) {
        return Math.addExact(Math.multiplyExact(at.getEpochSecond(), 1_000_000L), at.getNano() / 1_000);
    }
}
