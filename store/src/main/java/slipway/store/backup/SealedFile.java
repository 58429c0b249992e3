package slipway.store.backup;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import slipway.store.db.OwnFile;

/** A file, compressed and sealed. */
final class SealedFile {
    private SealedFile() {}

    /** Seals a file; on return the sealed one is on the disk. */
    static void seal(Path plain, Path sealed, BackupKey key) throws IOException {
        Path packed = plain.resolveSibling("packed");
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed))) {
            Files.copy(plain, out);
        }
        OwnFile.make(sealed);
        try (InputStream in = new BufferedInputStream(Files.newInputStream(packed));
                FileChannel channel = FileChannel.open(sealed, StandardOpenOption.WRITE);
                OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel))) {
            Sealing.seal(in, out, key);
            out.flush();
            channel.force(true);
        }
        Files.delete(packed);
    }

    /**
     * Opens a sealed file.
     *
     * @throws DamageException if it is not what was sealed with this key
     */
    static void open(Path sealed, Path plain, BackupKey key) throws IOException {
        Path packed = plain.resolveSibling("packed");
        try (InputStream in = new BufferedInputStream(Files.newInputStream(sealed));
                OutputStream out = new BufferedOutputStream(Files.newOutputStream(packed))) {
            Sealing.open(in, out, key);
        }
        OwnFile.make(plain);
        try (InputStream in = new GZIPInputStream(Files.newInputStream(packed));
                OutputStream out = new BufferedOutputStream(Files.newOutputStream(plain))) {
            in.transferTo(out);
        }
        Files.delete(packed);
    }

    static String sha256(Path file) throws IOException {
        try (var in = new DigestInputStream(Files.newInputStream(file), MessageDigest.getInstance("SHA-256"))) {
            in.transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(in.getMessageDigest().digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
