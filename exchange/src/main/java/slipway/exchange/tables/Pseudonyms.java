package slipway.exchange.tables;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.LocalDate;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Names and date shifts of people that cannot be guessed without the key: HMAC-SHA-256 of the case id. Whoever throws the
 * key away cannot go back.
 */
final class Pseudonyms {
    private static final int LEAST_KEY_BYTES = 16;
    private static final int NAME_BYTES = 8;

    /** Largest shift either way; longer than any season, shorter than what would move a year of care. */
    private static final int MOST_DAYS = 182;

    private final SecretKeySpec key;

    Pseudonyms(byte[] key) {
        if (key.length < LEAST_KEY_BYTES) {
            throw new IllegalArgumentException(
                    "the key must have at least %d bytes, had %d".formatted(LEAST_KEY_BYTES, key.length));
        }
        this.key = new SecretKeySpec(key, "HmacSHA256");
    }

    /** What the person is called in the tables. */
    String name(String caseId) {
        return HexFormat.of().formatHex(digest("name", caseId), 0, NAME_BYTES);
    }

    /** A day of the person, moved by the same number of days as all others of that person. */
    LocalDate shifted(String caseId, LocalDate day) {
        long number = ByteBuffer.wrap(digest("days", caseId)).getLong();
        return day.plusDays(Math.floorMod(number, 2L * MOST_DAYS + 1) - MOST_DAYS);
    }

    private byte[] digest(String use, String caseId) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(key);
            return mac.doFinal((use + "/" + caseId).getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has HMAC-SHA-256", e);
        }
    }
}
