package slipway.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import javax.sql.DataSource;
import org.jooq.SQLDialect;
import slipway.care.record.Records;
import slipway.store.backup.BackupKey;
import slipway.store.backup.BackupReport;
import slipway.store.backup.Backups;
import slipway.store.backup.Restoring;
import slipway.store.db.Db;
import slipway.store.db.Migrations;
import slipway.store.db.OwnFile;
import slipway.store.db.Pools;
import slipway.store.db.StoreFailure;
import slipway.store.session.ServerKeys;
import slipway.store.session.SessionStore;
import slipway.store.work.SharedWork;

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
    private final ServerKeys keys;
    private final Backups backups;
    private final SharedWork work;

    private Store(Pools pools, SQLDialect dialect) {
        var db = new Db(pools, dialect);
        this.pools = pools;
        this.records = new StoredRecords(db);
        this.sessions = new SessionStore(db);
        this.keys = new ServerKeys(db);
        this.backups = new Backups(pools, dialect, db);
        this.work = new SharedWork(db);
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
            return new Store(pools, dialect);
        } catch (RuntimeException e) {
            pools.close();
            throw new StoreFailure(
                    "the tables of %s cannot be brought up to date; if a later version of the program made them, use that"
                            .formatted(settings),
                    e);
        }
    }

    private static Pools pools(StoreSettings settings) {
        try {
            if (settings.isSqlite()) {
                makeFile(file(settings));
                requireWritable(file(settings));
                return Pools.sqlite(settings.url(), settings.readers());
            }
            return Pools.postgres(
                    settings.url(), settings.user(), settings.password(), settings.writers(), settings.readers());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (RuntimeException e) {
            throw new StoreFailure("the database %s cannot be opened: %s".formatted(settings, rootOf(e)), e);
        }
    }

    /** What the driver says; nothing of a record is in play yet. */
    private static String rootOf(Throwable failure) {
        Throwable root = failure;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return String.valueOf(root.getMessage());
    }

    private static void makeFile(Path file) throws IOException {
        if (Files.exists(file)) {
            return;
        }
        Files.createDirectories(file.toAbsolutePath().getParent());
        OwnFile.make(file);
    }

    /** SQLite writes beside its file even where it only reads, and does not say what is wrong if it cannot. */
    private static void requireWritable(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null && (!Files.isWritable(folder) || !Files.isWritable(file))) {
            throw new IllegalStateException(
                    "its folder and its file must be writable (is the disk mounted read-only, or are rights missing?)");
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

    /** Secrets with which the program signs what it hands out. */
    public ServerKeys keys() {
        return keys;
    }

    /** Backups, and how old the last one is. */
    public Backups backups() {
        return backups;
    }

    /** What is done on a schedule, by one of several servers at a time, and what came of it. */
    public SharedWork work() {
        return work;
    }

    /** For what writes in its own way, such as web sessions; one connection on SQLite. */
    public DataSource writing() {
        return pools.writing();
    }

    /** For what only reads; the database refuses changes. */
    public DataSource reading() {
        return pools.reading();
    }

    /**
     * Brings a backup back to where no records are yet, and brings its tables up to date.
     *
     * @param folder for what is not sealed any more, with SQLite the folder of the records itself
     * @throws java.nio.file.FileAlreadyExistsException if there is a file of records already
     * @throws StoreFailure if the server holds records already
     * @throws slipway.store.backup.DamageException if the backup is damaged, or the key does not fit
     */
    public static BackupReport restore(Path backup, BackupKey key, StoreSettings settings, Path folder, Instant now)
            throws IOException {
        if (settings.isSqlite()) {
            return Restoring.intoFile(backup, key, file(settings), now);
        }
        // Opening brings the tables up to date.
        try (Store store = open(settings)) {
            return Restoring.intoServer(backup, key, store.pools, folder, now);
        }
    }

    private static Path file(StoreSettings settings) {
        return Path.of(settings.url().substring("jdbc:sqlite:".length()).split("\\?", 2)[0]);
    }

    @Override
    public void close() {
        pools.close();
    }
}
