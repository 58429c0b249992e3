package slipway.web.shell;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Locale;
import org.apache.commons.codec.binary.Base32;

/** The tokens of other programs: how they look and how they are kept. */
public final class Tokens {
    /** A regular expression of a whole token. The word in front lets scanners of leaked secrets find it. */
    public static final String FORM = "slipway_[a-z2-7]{12}_[a-z2-7]{32}";

    private static final int ID_BYTES = 8;
    private static final int ID_LETTERS = 12;
    /** 160 bits: nobody guesses that, so that a plain digest is enough and no slow one is needed. */
    private static final int SECRET_BYTES = 20;

    private static final SecureRandom RANDOM = new SecureRandom();

    private Tokens() {}

    /** A new token. */
    public static String make() {
        return "slipway_" + letters(ID_BYTES).substring(0, ID_LETTERS) + "_" + letters(SECRET_BYTES);
    }

    /** The part of a token that may be shown and written down. */
    public static String id(String token) {
        return token.split("_", -1)[1];
    }

    /** SHA-256 of a token, in hexadecimal: what is kept of it. */
    public static String digest(String token) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha.digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String letters(int length) {
        var bytes = new byte[length];
        RANDOM.nextBytes(bytes);
        return new Base32().encodeAsString(bytes).replace("=", "").toLowerCase(Locale.ROOT);
    }
}
