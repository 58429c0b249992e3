package slipway.store.backup;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Arrays;

/**
 * The beginning of a sealed file, 41 bytes: {@code SLIPWAYB}, version 1, kind of key (1 passphrase, 2 key file), memory
 * of Argon2id in KiB (4 bytes), its passes (4 bytes), salt (16 bytes), beginning of the nonces (7 bytes). All
 * of it is authenticated with every chunk.
 */
record SealHeader(boolean passphrase, int memoryKib, int iterations, byte[] salt, byte[] noncePrefix) {
    static final int BYTES = 41;

    private static final byte[] MAGIC = "SLIPWAYB".getBytes(StandardCharsets.US_ASCII);
    private static final int SALT = 16;
    private static final int PREFIX = 7;

    /** The second of the choices that RFC 9106, section 4, recommends, with one lane. */
    private static final int MEMORY_KIB = 65_536;

    private static final int ITERATIONS = 3;
    /** A file that asks for more is not one of ours. */
    private static final int MOST_MEMORY_KIB = 1_048_576;

    private static final int MOST_ITERATIONS = 20;

    static SealHeader random(BackupKey key) {
        var random = new SecureRandom();
        var salt = new byte[SALT];
        random.nextBytes(salt);
        var prefix = new byte[PREFIX];
        random.nextBytes(prefix);
        return new SealHeader(key.isPassphrase(), MEMORY_KIB, ITERATIONS, salt, prefix);
    }

    byte[] bytes() {
        return ByteBuffer.allocate(BYTES)
                .put(MAGIC)
                .put((byte) 1)
                .put((byte) (passphrase ? 1 : 2))
                .putInt(memoryKib)
                .putInt(iterations)
                .put(salt)
                .put(noncePrefix)
                .array();
    }

    /**
     * Reads a header.
     *
     * @throws DamageException if it is none, or one of a later program
     */
    static SealHeader read(InputStream in) throws IOException {
        var bytes = new byte[BYTES];
        try {
            new DataInputStream(in).readFully(bytes);
        } catch (EOFException e) {
            throw new DamageException("it is no backup of this program: too short");
        }
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        var magic = new byte[MAGIC.length];
        buffer.get(magic);
        if (!Arrays.equals(magic, MAGIC)) {
            throw new DamageException("it is no backup of this program");
        }
        int version = buffer.get();
        if (version != 1) {
            throw new DamageException("it is a backup of form %d; this program reads form 1".formatted(version));
        }
        int kind = buffer.get();
        int memory = buffer.getInt();
        int iterations = buffer.getInt();
        if (kind < 1
                || kind > 2
                || memory < 8
                || memory > MOST_MEMORY_KIB
                || iterations < 1
                || iterations > MOST_ITERATIONS) {
            throw new DamageException("its beginning is damaged");
        }
        var salt = new byte[SALT];
        buffer.get(salt);
        var prefix = new byte[PREFIX];
        buffer.get(prefix);
        return new SealHeader(kind == 1, memory, iterations, salt, prefix);
    }
}
