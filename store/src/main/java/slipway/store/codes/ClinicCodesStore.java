package slipway.store.codes;

import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Record;
import slipway.care.record.Act;
import slipway.care.record.Saving;
import slipway.care.record.codes.ClinicCodes;
import slipway.care.record.codes.CodeFiles;
import slipway.care.record.codes.CodeLoad;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.tables.CodeLoadTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** Codes of clinics in the database. */
public final class ClinicCodesStore implements ClinicCodes {
    private static final String ENTITY = "codes";

    private final Db db;
    private final TrailWriter trail;

    public ClinicCodesStore(Db db, TrailWriter trail) {
        this.db = db;
        this.trail = trail;
    }

    @Override
    public List<CodeLoad> loads(String clinicId) {
        return db.read(query -> loads(query, clinicId));
    }

    private static List<CodeLoad> loads(DSLContext query, String clinicId) {
        return query.select(
                        CodeLoadTable.CLINIC_ID,
                        CodeLoadTable.VERSION,
                        CodeLoadTable.LOADED_AT,
                        CodeLoadTable.LOADED_BY,
                        CodeLoadTable.CODES,
                        CodeLoadTable.EXCLUSIONS,
                        CodeLoadTable.SHA256)
                .from(CodeLoadTable.CODE_LOAD)
                .where(CodeLoadTable.CLINIC_ID.eq(clinicId))
                .orderBy(CodeLoadTable.VERSION.desc())
                .fetch(ClinicCodesStore::load);
    }

    private static CodeLoad load(Record row) {
        return new CodeLoad(
                row.get(CodeLoadTable.CLINIC_ID),
                row.get(CodeLoadTable.VERSION),
                row.get(CodeLoadTable.LOADED_AT),
                row.get(CodeLoadTable.LOADED_BY),
                row.get(CodeLoadTable.CODES),
                row.get(CodeLoadTable.EXCLUSIONS),
                row.get(CodeLoadTable.SHA256));
    }

    @Override
    public long version(String clinicId) {
        return db.read(query -> query.select(CodeLoadTable.VERSION)
                .from(CodeLoadTable.CODE_LOAD)
                .where(CodeLoadTable.CLINIC_ID.eq(clinicId))
                .orderBy(CodeLoadTable.VERSION.desc())
                .limit(1)
                .fetchOptional(CodeLoadTable.VERSION)
                .orElse(0L));
    }

    @Override
    public Optional<CodeFiles> files(String clinicId, long version) {
        return db.read(query -> query.select(CodeLoadTable.CODES_FILE, CodeLoadTable.EXCLUSIONS_FILE)
                .from(CodeLoadTable.CODE_LOAD)
                .where(CodeLoadTable.CLINIC_ID.eq(clinicId), CodeLoadTable.VERSION.eq(version))
                .fetchOptional(row ->
                        new CodeFiles(row.get(CodeLoadTable.CODES_FILE), row.get(CodeLoadTable.EXCLUSIONS_FILE))));
    }

    @Override
    public Saving<CodeLoad> load(CodeFiles files, long version, Act act) {
        var after = new CodeLoad(
                act.clinicId(),
                version + 1,
                act.at(),
                act.userId(),
                files.codeCount(),
                files.exclusionCount(),
                files.sha256());
        Chain chain = Chain.ofClinic(act.clinicId());
        return trail.write(chain, tx -> {
            List<CodeLoad> before = loads(tx, act.clinicId());
            long newest = before.isEmpty() ? 0 : before.get(0).version();
            if (newest != version) {
                return new Saving.Stale<>(before.isEmpty() ? after : before.get(0));
            }
            insert(tx, after, files);
            Note note = before.isEmpty()
                    ? Note.created(ENTITY, act.clinicId(), after.version(), after)
                    : Note.changed(ENTITY, act.clinicId(), after.version(), before.get(0), after);
            trail.append(tx, chain, act, note.as(Action.IMPORT));
            return new Saving.Saved<>(after);
        });
    }

    private static void insert(DSLContext tx, CodeLoad load, CodeFiles files) {
        tx.insertInto(CodeLoadTable.CODE_LOAD)
                .set(CodeLoadTable.CLINIC_ID, load.clinicId())
                .set(CodeLoadTable.VERSION, load.version())
                .set(CodeLoadTable.LOADED_AT, load.at())
                .set(CodeLoadTable.LOADED_BY, load.by())
                .set(CodeLoadTable.CODES, load.codes())
                .set(CodeLoadTable.EXCLUSIONS, load.exclusions())
                .set(CodeLoadTable.CODES_FILE, files.codes())
                .set(CodeLoadTable.EXCLUSIONS_FILE, files.exclusions())
                .set(CodeLoadTable.SHA256, load.sha256())
                .execute();
    }
}
