package slipway.care.record.remind;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;

/**
 * What a person said to reminders, last.
 *
 * @param hour from this full hour on by the clock of the clinic, within {@link #EARLIEST} and {@link #LATEST}
 * @param addressSha256 digest of the address for which the person said yes; another address has no consent
 * @param saidAt when the person said yes
 * @param writtenBy who wrote it down, id of a staff account
 * @param endedAt when it ended; empty while it holds
 * @param endedByPerson whether the person ended it by the link in a reminder
 */
public record Consent(
        int hour,
        String addressSha256,
        Instant saidAt,
        String writtenBy,
        Optional<Instant> endedAt,
        boolean endedByPerson) {
    /** No reminder comes before this hour; assumption. */
    public static final int EARLIEST = 6;

    /** Nor from the hour after this one; assumption. */
    public static final int LATEST = 21;

    public Consent {
        requireHour(hour);
        if (endedByPerson && endedAt.isEmpty()) {
            throw new IllegalArgumentException("who ended a consent is known only of one that ended");
        }
    }

    /** Whether reminders may be sent, as far as the person is concerned. */
    public boolean holds() {
        return endedAt.isEmpty();
    }

    /**
     * Lets hours pass that can be chosen.
     *
     * @throws IllegalArgumentException for any other
     */
    public static void requireHour(int hour) {
        if (hour < EARLIEST || hour > LATEST) {
            throw new IllegalArgumentException(
                    "hour of reminders must be within %d and %d, was %d".formatted(EARLIEST, LATEST, hour));
        }
    }

    /** Whether the person said yes for this address. */
    public boolean isFor(String address) {
        return digest(address).equals(addressSha256);
    }

    /** SHA-256 of an address in hexadecimal; capitals are no difference to whoever says yes. */
    public static String digest(String address) {
        try {
            byte[] plain = address.strip().toLowerCase(Locale.ROOT).getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(plain));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
