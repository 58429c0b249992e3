package slipway.store.backup;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.SQLDialect;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.db.Ids;
import slipway.store.db.Pools;
import slipway.store.db.StoreFailure;
import slipway.store.tables.BackupTable;
import slipway.store.tables.ClinicTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** Makes backups of an open store while others work with it. */
public final class Backups {
    private final Pools pools;
    private final SQLDialect dialect;
    private final Db db;

    public Backups(Pools pools, SQLDialect dialect, Db db) {
        this.pools = pools;
        this.dialect = dialect;
        this.db = db;
    }

    /** The last backup that was made and found whole. */
    public Optional<BackupNote> last() {
        return db.read(query -> query.select(BackupTable.ID, BackupTable.AT, BackupTable.SIZE_BYTES, BackupTable.SHA256)
                .from(BackupTable.BACKUP)
                .orderBy(BackupTable.AT.desc())
                .limit(1)
                .fetchOptional(org.jooq.Records.mapping(BackupNote::new)));
    }

    /**
     * Makes a backup, opens it again, checks what came out of it, and only then gives it its name and notes it in the
     * trail of every clinic.
     *
     * @param target must not be there
     * @param folder for what is not sealed yet; a folder within is made and deleted
     * @throws IOException if it cannot be written, or the target is there
     * @throws DamageException if what came out is not whole
     */
    public BackupReport write(Path target, BackupKey key, Path folder, Instant now) throws IOException {
        if (Files.exists(target)) {
            throw new FileAlreadyExistsException(target.toString(), "", "is there already");
        }
        Path inside = SqliteFiles.folderIn(folder);
        Path part = target.resolveSibling("." + target.getFileName() + ".part");
        try {
            Path plain = inside.resolve("snapshot.db");
            snapshot(plain);
            SealedFile.seal(plain, part, key);
            Path again = inside.resolve("again.db");
            SealedFile.open(part, again, key);
            if (Files.mismatch(plain, again) >= 0) {
                throw new DamageException("what was written is not what came out again");
            }
            BackupReport report = Restoring.look(again);
            Files.move(part, target);
            note(target, now);
            return report;
        } finally {
            Files.deleteIfExists(part);
            SqliteFiles.delete(inside);
        }
    }

    private void snapshot(Path plain) {
        try {
            if (dialect == SQLDialect.SQLITE) {
                try (Connection connection = pools.apart()) {
                    Snapshot.ofSqlite(connection, plain);
                }
            } else {
                Snapshot.ofPostgres(pools.reading(), plain);
            }
        } catch (SQLException e) {
            throw new StoreFailure("the records cannot be copied (SQL state %s)".formatted(e.getSQLState()), e);
        }
    }

    private void note(Path target, Instant now) throws IOException {
        var written = new BackupNote(new Ids().next(now), now, Files.size(target), SealedFile.sha256(target));
        db.write(tx -> tx.insertInto(BackupTable.BACKUP)
                .set(BackupTable.ID, written.id())
                .set(BackupTable.AT, written.at())
                .set(BackupTable.SIZE_BYTES, written.sizeBytes())
                .set(BackupTable.SHA256, written.sha256())
                .execute());
        noteInTrails(db, Action.EXPORT, written.id(), now);
    }

    /** An entry in the trail of every clinic. */
    static void noteInTrails(Db db, Action action, String backupId, Instant now) {
        List<String> clinics = db.read(
                query -> query.select(ClinicTable.ID).from(ClinicTable.CLINIC).fetch(ClinicTable.ID));
        var trail = new TrailWriter(db);
        for (String clinic : clinics) {
            Chain chain = Chain.ofClinic(clinic);
            var act = new Act("backup", Role.PROGRAM, clinic, now);
            trail.write(chain, tx -> {
                trail.append(tx, chain, act, Note.plain(action, "backup", backupId));
                return clinic;
            });
        }
    }
}
