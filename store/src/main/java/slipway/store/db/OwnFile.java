package slipway.store.db;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** Files that only their owner may read. */
public final class OwnFile {
    private OwnFile() {}

    /**
     * Makes an empty file that nobody else may read, where the file system knows such rights.
     *
     * @throws java.nio.file.FileAlreadyExistsException if there is a file
     */
    public static void make(Path file) throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        } else {
            Files.createFile(file);
        }
    }
}
