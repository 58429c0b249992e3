package slipway.store;

import java.nio.file.Path;

/**
 * Where the records are.
 *
 * @param url a JDBC URL that begins with {@code jdbc:sqlite:} or {@code jdbc:postgresql:}
 * @param user of PostgreSQL; empty for SQLite
 * @param password of PostgreSQL; empty for SQLite
 * @param writers most connections that write, 2 or more, since bringing the tables up to date takes two at once; SQLite
 *     has one whatever stands here
 * @param readers most connections that read, 1 or more
 */
public record StoreSettings(String url, String user, String password, int writers, int readers) {
    /** Name of the file in a data folder. */
    public static final String FILE = "slipway.db";

    private static final int DEFAULT_CONNECTIONS = 4;

    public StoreSettings {
        if (!url.startsWith("jdbc:sqlite:") && !url.startsWith("jdbc:postgresql:")) {
            throw new IllegalArgumentException("database must be jdbc:sqlite:... or jdbc:postgresql:...");
        }
        if (writers < 2 || readers < 1) {
            throw new IllegalArgumentException("there must be 2 or more writers and 1 or more readers");
        }
    }

    /**
     * SQLite in a folder.
     *
     * @throws IllegalArgumentException if the name of the folder has a question mark, behind which the driver reads settings
     */
    public static StoreSettings inFolder(Path folder) {
        if (folder.toAbsolutePath().toString().contains("?")) {
            throw new IllegalArgumentException("the folder's name must have no question mark: " + folder);
        }
        return new StoreSettings(
                "jdbc:sqlite:" + folder.resolve(FILE).toAbsolutePath(),
                "",
                "",
                DEFAULT_CONNECTIONS,
                DEFAULT_CONNECTIONS);
    }

    /** PostgreSQL. */
    public static StoreSettings postgres(String url, String user, String password) {
        return new StoreSettings(url, user, password, DEFAULT_CONNECTIONS, DEFAULT_CONNECTIONS);
    }

    boolean isSqlite() {
        return url.startsWith("jdbc:sqlite:");
    }

    /** Without the password, and without what a URL may carry behind its question mark. */
    @Override
    public String toString() {
        return url.split("\\?", 2)[0];
    }
}
