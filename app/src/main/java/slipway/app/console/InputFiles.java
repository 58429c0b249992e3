package slipway.app.console;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads files that the user names. */
public final class InputFiles {
    /** No input of this program is longer; the readers have tighter bounds of their own. */
    private static final long MAX_BYTES = 50_000_000;

    private InputFiles() {}

    /**
     * The content of a file.
     *
     * @throws BadInputException if there is none that can be read
     */
    public static byte[] read(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw new BadInputException(file + ": is a folder, a file is needed");
            }
            long size = Files.size(file);
            if (size > MAX_BYTES) {
                throw new BadInputException("%s: must have at most %d bytes, had %d".formatted(file, MAX_BYTES, size));
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new BadInputException(file + ": there is no such file");
        } catch (IOException e) {
            throw new BadInputException(file + ": cannot be read (" + e.getMessage() + ")");
        }
    }
}
