package slipway.web.security;

import com.eatthepath.otp.TimeBasedOneTimePasswordGenerator;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.OptionalLong;
import javax.crypto.SecretKey;
import javax.crypto.spec.SecretKeySpec;
import org.apache.commons.codec.binary.Base32;

/** Codes of an authenticator: six digits every thirty seconds, as RFC 6238 has them with SHA-1. */
public final class SecondFactor {
    private static final int SECRET_BYTES = 20;

    /** Clocks of phones are off by a step now and then. */
    private static final int STEPS_OFF = 1;

    private static final TimeBasedOneTimePasswordGenerator CODES = new TimeBasedOneTimePasswordGenerator();

    private SecondFactor() {}

    /** A new secret in base 32. */
    public static String newSecret(SecureRandom random) {
        var bytes = new byte[SECRET_BYTES];
        random.nextBytes(bytes);
        return new Base32().encodeAsString(bytes);
    }

    /** The address that authenticators read from a QR code. */
    public static String address(String secret, String login) {
        return "otpauth://totp/Slipway:%s?secret=%s&issuer=Slipway"
                .formatted(URLEncoder.encode(login, StandardCharsets.UTF_8).replace("+", "%20"), secret);
    }

    /**
     * The time step whose code this is; empty if it is none of now.
     *
     * @param after a step that was used already: a code counts once
     */
    public static OptionalLong matchingStep(String secret, String code, Instant now, long after) {
        String digits = code.replace(" ", "");
        long step = now.getEpochSecond() / CODES.getTimeStep().toSeconds();
        SecretKey key = new SecretKeySpec(new Base32().decode(secret), CODES.getAlgorithm());
        for (long at = step - STEPS_OFF; at <= step + STEPS_OFF; at++) {
            if (at > after && same(codeAt(key, at), digits)) {
                return OptionalLong.of(at);
            }
        }
        return OptionalLong.empty();
    }

    /** The code of a secret at a time. */
    static String codeAt(String secret, Instant at) {
        return codeAt(
                new SecretKeySpec(new Base32().decode(secret), CODES.getAlgorithm()),
                at.getEpochSecond() / CODES.getTimeStep().toSeconds());
    }

    private static String codeAt(SecretKey key, long step) {
        try {
            Instant at = Instant.ofEpochSecond(step * CODES.getTimeStep().toSeconds());
            return CODES.generateOneTimePasswordString(key, at);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java has no " + CODES.getAlgorithm(), e);
        }
    }

    private static boolean same(String a, String b) {
        return MessageDigest.isEqual(a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
    }
}
