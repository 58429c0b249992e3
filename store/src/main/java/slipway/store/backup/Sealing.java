package slipway.store.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Seals a stream: header, 16 bytes by which a wrong key is told from damage, then chunks of 64 KiB under AES-256-GCM.
 * The nonce of a chunk is the prefix of the header, its number, and whether it is the last (the STREAM construction of
 * Hoang, Reyhanitabar, Rogaway and Vizár, 2015): a chunk that is changed, left out, exchanged or cut off is found.
 */
final class Sealing {
    static final int CHUNK = 65_536;

    private static final int TAG = 16;
    private static final int NONCE = 12;

    private Sealing() {}

    static void seal(InputStream plain, OutputStream sealed, BackupKey key) throws IOException {
        SealHeader header = SealHeader.random(key);
        sealed.write(header.bytes());
        sealed.write(check(key, header));
        SecretKeySpec secret = key.derived(header, "seal");
        byte[] chunk = plain.readNBytes(CHUNK);
        for (int number = 0; ; number = Math.incrementExact(number)) {
            // Only when nothing follows a chunk is it known to be the last.
            byte[] next = chunk.length < CHUNK ? new byte[0] : plain.readNBytes(CHUNK);
            boolean last = next.length == 0;
            try {
                sealed.write(cipher(Cipher.ENCRYPT_MODE, secret, header, number, last)
                        .doFinal(chunk));
            } catch (GeneralSecurityException e) {
                throw new IllegalStateException("every Java seals with AES-GCM", e);
            }
            if (last) {
                return;
            }
            chunk = next;
        }
    }

    /**
     * Opens what was sealed. Nothing that follows a damaged chunk is written; whoever asked throws away what was.
     *
     * @throws DamageException if the key is another one, or anything was changed, is missing or was added
     */
    static void open(InputStream sealed, OutputStream plain, BackupKey key) throws IOException {
        SealHeader header = SealHeader.read(sealed);
        if (header.passphrase() != key.isPassphrase()) {
            throw new DamageException("it was sealed with %s, not with %s"
                    .formatted(header.passphrase() ? "a passphrase" : "a key file", key));
        }
        if (!MessageDigest.isEqual(check(key, header), sealed.readNBytes(TAG))) {
            throw new DamageException("the key does not fit, or the beginning is damaged");
        }
        SecretKeySpec secret = key.derived(header, "seal");
        byte[] chunk = sealed.readNBytes(CHUNK + TAG);
        for (int number = 0; ; number = Math.incrementExact(number)) {
            byte[] next = chunk.length < CHUNK + TAG ? new byte[0] : sealed.readNBytes(CHUNK + TAG);
            boolean last = next.length == 0;
            try {
                plain.write(cipher(Cipher.DECRYPT_MODE, secret, header, number, last)
                        .doFinal(chunk));
            } catch (AEADBadTagException e) {
                throw new DamageException("it is damaged or cut off at %d KiB".formatted(number * (CHUNK / 1_024)));
            } catch (GeneralSecurityException e) {
                throw new DamageException("it is damaged or cut off near its end");
            }
            if (last) {
                return;
            }
            chunk = next;
        }
    }

    private static byte[] check(BackupKey key, SealHeader header) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(key.derived(header, "check"));
            return java.util.Arrays.copyOf(mac.doFinal(header.bytes()), TAG);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has HmacSHA256", e);
        }
    }

    private static Cipher cipher(int mode, SecretKeySpec secret, SealHeader header, int number, boolean last)
            throws GeneralSecurityException {
        byte[] nonce = ByteBuffer.allocate(NONCE)
                .put(header.noncePrefix())
                .putInt(number)
                .put((byte) (last ? 1 : 0))
                .array();
        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(mode, secret, new GCMParameterSpec(TAG * 8, nonce));
        cipher.updateAAD(header.bytes());
        return cipher;
    }
}
