package slipway.web.security;

import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;

/**
 * Argon2id, a few at a time. Each hash takes {@value #MEMORY_KIB} KiB on purpose; whoever sends hundreds of sign-ins at once
 * would otherwise fill the memory of the server, and does not even need an account for it.
 *
 * <p>Two passes over 19 MiB in one lane: OWASP ASVS 5.0.0, appendix C (from memory).
 */
final class PasswordHashes implements PasswordEncoder {
    static final int MEMORY_KIB = 19 * 1024;
    private static final int PASSES = 2;
    private static final int LANES = 1;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;

    private final PasswordEncoder hash;
    private final Semaphore room;

    PasswordHashes(PasswordEncoder hash, int atOnce) {
        this.hash = hash;
        this.room = new Semaphore(atOnce, true);
    }

    /** As many at once as there are processors, at least two. */
    static PasswordHashes onThisMachine() {
        return new PasswordHashes(
                new Argon2PasswordEncoder(SALT_BYTES, HASH_BYTES, LANES, MEMORY_KIB, PASSES),
                Math.max(2, Runtime.getRuntime().availableProcessors()));
    }

    @Override
    public @Nullable String encode(@Nullable CharSequence password) {
        room.acquireUninterruptibly();
        try {
            return hash.encode(password);
        } finally {
            room.release();
        }
    }

    @Override
    public boolean matches(@Nullable CharSequence password, @Nullable String encoded) {
        room.acquireUninterruptibly();
        try {
            return hash.matches(password, encoded);
        } finally {
            room.release();
        }
    }

    /** A hash that was made with less is made anew when its owner changes the password. */
    @Override
    public boolean upgradeEncoding(@Nullable String encoded) {
        return hash.upgradeEncoding(encoded);
    }
}
