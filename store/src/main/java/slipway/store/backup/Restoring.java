package slipway.store.backup;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import javax.sql.DataSource;
import org.jooq.SQLDialect;
import slipway.care.record.trail.Action;
import slipway.store.db.Db;
import slipway.store.db.Migrations;
import slipway.store.db.Pools;
import slipway.store.db.StoreFailure;
import slipway.store.tables.PersonTable;
import slipway.store.trail.TrailStore;
import slipway.store.trail.TrailWriter;

/** Brings backups back. */
public final class Restoring {
    private Restoring() {}

    /**
     * Opens a backup and checks it, and changes nothing.
     *
     * @param folder for what is not sealed any more; a folder within is made and deleted
     * @throws DamageException if it is damaged, or the key does not fit
     */
    public static BackupReport check(Path backup, BackupKey key, Path folder) throws IOException {
        Path inside = SqliteFiles.folderIn(folder);
        try {
            return look(opened(backup, key, inside));
        } finally {
            SqliteFiles.delete(inside);
        }
    }

    /**
     * Brings a backup back as a SQLite file.
     *
     * @param target must not be there
     * @throws FileAlreadyExistsException if it is
     * @throws DamageException if the backup is damaged, or the key does not fit; then nothing was changed
     */
    public static BackupReport intoFile(Path backup, BackupKey key, Path target, Instant now) throws IOException {
        if (Files.exists(target) || Files.exists(target.resolveSibling(target.getFileName() + "-wal"))) {
            throw new FileAlreadyExistsException(target.toString(), "", "holds records already; nothing was changed");
        }
        Path inside =
                SqliteFiles.folderIn(target.resolveSibling(".").toAbsolutePath().normalize());
        try {
            Path plain = opened(backup, key, inside);
            BackupReport report = look(plain);
            try (Pools pools = Pools.sqlite(url(plain), 1)) {
                Migrations.run(pools.writing(), SQLDialect.SQLITE);
                noteReturn(new Db(pools, SQLDialect.SQLITE), backup, now);
            }
            try (FileChannel channel = FileChannel.open(plain, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            Files.move(plain, target);
            return report;
        } finally {
            SqliteFiles.delete(inside);
        }
    }

    /**
     * Brings a backup back into a PostgreSQL database whose tables are up to date and empty.
     *
     * @throws StoreFailure if there is anything in them; nothing was changed then
     * @throws DamageException if the backup is damaged, or the key does not fit; then nothing was changed
     */
    public static BackupReport intoServer(Path backup, BackupKey key, Pools pools, Path folder, Instant now)
            throws IOException {
        Path inside = SqliteFiles.folderIn(folder);
        try {
            Path plain = opened(backup, key, inside);
            try (Pools file = Pools.sqlite(url(plain), 1)) {
                Migrations.run(file.writing(), SQLDialect.SQLITE);
            }
            BackupReport report = look(plain);
            copy(plain, pools.writing());
            var db = new Db(pools, SQLDialect.POSTGRES);
            BackupReport arrived = look(db);
            if (!arrived.equals(report)) {
                throw new DamageException("what arrived in the database is not what was in the backup");
            }
            noteReturn(db, backup, now);
            return arrived;
        } finally {
            SqliteFiles.delete(inside);
        }
    }

    private static void copy(Path plain, DataSource writing) {
        try (Connection from = SqliteFiles.open(plain);
                Connection to = writing.getConnection()) {
            to.setAutoCommit(false);
            for (String table : TableCopy.tables(from)) {
                try (var statement = to.createStatement();
                        var rows = statement.executeQuery("select 1 from " + table + " limit 1")) {
                    if (rows.next()) {
                        throw new StoreFailure("the database holds records already; nothing was changed");
                    }
                }
            }
            try {
                new TableCopy(from, from, to).run();
                to.commit();
            } catch (SQLException e) {
                to.rollback();
                throw e;
            }
        } catch (SQLException e) {
            throw new StoreFailure("the records cannot be put in (SQL state %s)".formatted(e.getSQLState()), e);
        }
    }

    private static Path opened(Path backup, BackupKey key, Path inside) throws IOException {
        Path plain = inside.resolve("restored.db");
        SealedFile.open(backup, plain, key);
        SqliteFiles.check(plain);
        return plain;
    }

    /** Looks into a plain file that nobody else works on. */
    static BackupReport look(Path plain) {
        SqliteFiles.check(plain);
        try (Pools pools = Pools.sqlite(url(plain), 1)) {
            return look(new Db(pools, SQLDialect.SQLITE));
        }
    }

    private static BackupReport look(Db db) {
        long people = db.read(query -> query.fetchCount(PersonTable.PERSON));
        return new BackupReport(new TrailStore(db, new TrailWriter(db)).verify(), people);
    }

    private static void noteReturn(Db db, Path backup, Instant now) throws IOException {
        Backups.noteInTrails(db, Action.IMPORT, SealedFile.sha256(backup), now);
    }

    private static String url(Path file) {
        return "jdbc:sqlite:" + file.toAbsolutePath();
    }
}
