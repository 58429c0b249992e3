package slipway.store.backup;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * What a backup is sealed with: the bytes of a key file, or a passphrase, which is made costly to guess with Argon2id
 * (RFC 9106).
 */
public final class BackupKey {
    /** Shortest passphrase, in characters. */
    public static final int MIN_PASSPHRASE = 15;
    /** Shortest key file, in bytes. */
    public static final int MIN_FILE = 32;

    private static final int KEY_BYTES = 32;

    private final byte[] secret;
    private final boolean passphrase;

    private BackupKey(byte[] secret, boolean passphrase) {
        this.secret = secret;
        this.passphrase = passphrase;
    }

    /**
     * A key from a passphrase.
     *
     * @throws IllegalArgumentException if it is shorter than {@link #MIN_PASSPHRASE}
     */
    public static BackupKey ofPassphrase(char[] words) {
        if (words.length < MIN_PASSPHRASE) {
            throw new IllegalArgumentException(
                    "the passphrase must have %d characters or more, had %d".formatted(MIN_PASSPHRASE, words.length));
        }
        ByteBuffer encoded = StandardCharsets.UTF_8.encode(CharBuffer.wrap(words));
        var bytes = new byte[encoded.remaining()];
        encoded.get(bytes);
        return new BackupKey(bytes, true);
    }

    /**
     * A key from the content of a file, which must be random.
     *
     * @throws IllegalArgumentException if it is shorter than {@link #MIN_FILE}
     */
    public static BackupKey ofFile(byte[] content) {
        if (content.length < MIN_FILE) {
            throw new IllegalArgumentException(
                    "the key file must have %d random bytes or more, had %d".formatted(MIN_FILE, content.length));
        }
        return new BackupKey(content.clone(), false);
    }

    boolean isPassphrase() {
        return passphrase;
    }

    /** The key for one backup and one use. */
    SecretKeySpec derived(SealHeader header, String use) {
        byte[] base = passphrase ? argon2(header) : hmac(header.salt(), secret);
        return new SecretKeySpec(hmac(base, use.getBytes(StandardCharsets.US_ASCII)), "AES");
    }

    private byte[] argon2(SealHeader header) {
        var generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withSalt(header.salt())
                .withMemoryAsKB(header.memoryKib())
                .withIterations(header.iterations())
                .withParallelism(1)
                .build());
        var key = new byte[KEY_BYTES];
        generator.generateBytes(secret, key);
        return key;
    }

    private static byte[] hmac(byte[] key, byte[] text) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            return mac.doFinal(text);
        } catch (java.security.GeneralSecurityException e) {
            throw new IllegalStateException("every Java has HmacSHA256", e);
        }
    }

    /** Says nothing secret. */
    @Override
    public String toString() {
        return passphrase ? "a passphrase" : "a key file";
    }
}
