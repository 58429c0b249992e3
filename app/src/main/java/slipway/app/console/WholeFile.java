package slipway.app.console;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Writes files so that whoever looks finds the old content or the new, never half of one: the bytes go to a file beside
 * it, are forced to the disk, and take the name in one step.
 */
public final class WholeFile {
    private WholeFile() {}

    /**
     * Writes one file; folders above it are made.
     *
     * @throws UncheckedIOException if it cannot be written; what stood there before still stands
     */
    public static void write(Path file, byte[] bytes) {
        writeAll(Map.of(file, bytes));
    }

    /**
     * Writes several files. All are complete on the disk before the first takes its name, so that a full disk leaves
     * everything as it was.
     *
     * @throws UncheckedIOException if one cannot be written
     */
    public static void writeAll(Map<Path, byte[]> files) {
        var beside = new LinkedHashMap<Path, Path>();
        try {
            for (Map.Entry<Path, byte[]> entry : files.entrySet()) {
                Path target = entry.getKey().toAbsolutePath();
                Files.createDirectories(target.getParent());
                Path temporary = Files.createTempFile(target.getParent(), ".", ".part");
                beside.put(temporary, target);
                force(temporary, entry.getValue());
            }
            for (Map.Entry<Path, Path> entry : beside.entrySet()) {
                Files.move(
                        entry.getKey(),
                        entry.getValue(),
                        StandardCopyOption.ATOMIC_MOVE,
                        StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            beside.keySet().forEach(WholeFile::deleteQuietly);
        }
    }

    private static void force(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    private static void deleteQuietly(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // The failure that brought us here is the one to tell; a left-over .part file harms nothing.
        }
    }
}
