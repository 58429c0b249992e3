package slipway.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import javax.sql.DataSource;
import org.jooq.SQLDialect;
import slipway.care.record.Records;
import slipway.store.db.Db;
import slipway.store.db.Migrations;
import slipway.store.db.Pools;
import slipway.store.db.StoreFailure;
import slipway.store.session.SessionStore;

/** The open database of a clinic. */
public final class Store implements AutoCloseable {
    static {
        // Its notices go to standard output, where a command line has its result.
        System.setProperty("org.jooq.no-logo", "true");
        System.setProperty("org.jooq.no-tips", "true");
    }

    private final Pools pools;
    private final Records records;
    private final SessionStore sessions;

    private Store(Pools pools, Db db) {
        this.pools = pools;
        this.records = new StoredRecords(db);
        this.sessions = new SessionStore(db);
    }

    /**
     * Opens a database and brings its tables up to date. A SQLite file is made if there is none, readable by its owner
     * only.
     *
     * @throws StoreFailure if it cannot be opened; the message carries no password
     */
    public static Store open(StoreSettings settings) {
        SQLDialect dialect = settings.isSqlite() ? SQLDialect.SQLITE : SQLDialect.POSTGRES;
        Pools pools = pools(settings);
        try {
            Migrations.run(pools.writing(), dialect);
            return new Store(pools, new Db(pools, dialect));
        } catch (RuntimeException e) {
            pools.close();
            throw new StoreFailure("the tables of %s cannot be brought up to date".formatted(settings), e);
        }
    }

    private static Pools pools(StoreSettings settings) {
        try {
            if (settings.isSqlite()) {
                makeFile(Path.of(
                        settings.url().substring("jdbc:sqlite:".length()).split("\\?", 2)[0]));
                return Pools.sqlite(settings.url(), settings.readers());
            }
            return Pools.postgres(
                    settings.url(), settings.user(), settings.password(), settings.writers(), settings.readers());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (RuntimeException e) {
            throw new StoreFailure("the database %s cannot be opened".formatted(settings), e);
        }
    }

    private static void makeFile(Path file) throws IOException {
        if (Files.exists(file)) {
            return;
        }
        Files.createDirectories(file.toAbsolutePath().getParent());
        Set<String> views = file.getFileSystem().supportedFileAttributeViews();
        if (views.contains("posix")) {
            Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        } else {
            Files.createFile(file);
        }
    }

    /** The ports. */
    public Records records() {
        return records;
    }

    /** Web sessions of staff. */
    public SessionStore sessions() {
        return sessions;
    }

    /** For what writes in its own way, such as web sessions; one connection on SQLite. */
    public DataSource writing() {
        return pools.writing();
    }

    /** For what only reads; the database refuses changes. */
    public DataSource reading() {
        return pools.reading();
    }

    @Override
    public void close() {
        pools.close();
    }
}
