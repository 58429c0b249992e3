package slipway.store.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.stream.Stream;

/** SQLite files that nobody else works on, and the folders for them. */
final class SqliteFiles {
    private static final String PREFIX = ".backup-";

    private SqliteFiles() {}

    /** Opens a file without any of the program's settings. */
    static Connection open(Path file) throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + file.toAbsolutePath());
    }

    /**
     * Checks that a file is a whole database.
     *
     * @throws DamageException if it is not
     */
    static void check(Path file) {
        try (Connection connection = open(file);
                var statement = connection.createStatement()) {
            try (ResultSet rows = statement.executeQuery("pragma integrity_check")) {
                if (!rows.next() || !rows.getString(1).equals("ok")) {
                    throw new DamageException("the database in it is damaged");
                }
            }
            try (ResultSet rows = statement.executeQuery("pragma foreign_key_check")) {
                if (rows.next()) {
                    throw new DamageException("rows of the database in it refer to rows that are not there");
                }
            }
        } catch (SQLException e) {
            throw new DamageException("there is no database in it");
        }
    }

    /** A new folder below another, readable by its owner only; what an interrupted run left there is deleted. */
    static Path folderIn(Path folder) throws IOException {
        Files.createDirectories(folder);
        try (Stream<Path> all = Files.list(folder)) {
            for (Path old : all.filter(path -> path.getFileName().toString().startsWith(PREFIX))
                    .toList()) {
                delete(old);
            }
        }
        // Made with rights for the owner only.
        return Files.createTempDirectory(folder, PREFIX);
    }

    static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
