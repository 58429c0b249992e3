package slipway.web.security;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Locale;
import org.apache.commons.codec.binary.Base32;
import slipway.care.record.Records;

/** The code of the first start: printed once where the program was started, kept as a hash, void after a day. */
public final class SetUpCode {
    private static final Duration VALID = Duration.ofDays(1);
    /** 80 bits: enough against guessing for a day, short enough to type. */
    private static final int BYTES = 10;

    private SetUpCode() {}

    /** Whether nobody can sign in yet: no clinic has an account. One may be there all the same, brought in by a file. */
    public static boolean needed(Records records) {
        return records.clinics().list().stream()
                .allMatch(clinic -> records.staff().list(clinic.id()).isEmpty());
    }

    /** Makes a new code and voids the one before. */
    public static String renew(Records records, Clock clock) {
        var bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        String code = new Base32().encodeAsString(bytes).replaceAll("(.{4})(?!$)", "$1-");
        records.clinics().setUpCode(digest(code), clock.instant().plus(VALID));
        return code;
    }

    /** SHA-256 of a code as typed: case, spaces and hyphens make no difference. */
    static String digest(String code) {
        String plain = code.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha.digest(plain.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
