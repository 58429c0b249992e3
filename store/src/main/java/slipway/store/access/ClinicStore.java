package slipway.store.access;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Records;
import org.jooq.SelectWhereStep;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.access.Clinic;
import slipway.care.record.access.Clinics;
import slipway.care.record.access.Setting;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.tables.ClinicSettingTable;
import slipway.store.tables.ClinicTable;
import slipway.store.tables.SetUpCodeTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** Clinics and their settings in the database. */
public final class ClinicStore implements Clinics {
    private final Db db;
    private final TrailWriter trail;

    public ClinicStore(Db db, TrailWriter trail) {
        this.db = db;
        this.trail = trail;
    }

    @Override
    public Clinic add(String name, String setting, String phone, String emergencyNumber, boolean demo, Act act) {
        var clinic = new Clinic(act.clinicId(), name, setting, phone, emergencyNumber, demo, 1);
        Chain chain = Chain.ofClinic(clinic.id());
        return trail.write(chain, tx -> {
            tx.insertInto(ClinicTable.CLINIC)
                    .set(ClinicTable.ID, clinic.id())
                    .set(ClinicTable.NAME, name)
                    .set(ClinicTable.SETTING, setting)
                    .set(ClinicTable.PHONE, phone)
                    .set(ClinicTable.EMERGENCY_NUMBER, emergencyNumber)
                    .set(ClinicTable.DEMO, demo)
                    .set(ClinicTable.VERSION, 1L)
                    .execute();
            trail.append(tx, chain, act, Note.created("clinic", clinic.id(), 1, clinic));
            return clinic;
        });
    }

    @Override
    public Optional<Clinic> find(String clinicId) {
        return db.read(query -> find(query, clinicId));
    }

    private static Optional<Clinic> find(DSLContext query, String clinicId) {
        return clinics(query).where(ClinicTable.ID.eq(clinicId)).fetchOptional(ClinicStore::clinic);
    }

    @Override
    public List<Clinic> list() {
        return db.read(query ->
                clinics(query).orderBy(ClinicTable.NAME, ClinicTable.ID).fetch(ClinicStore::clinic));
    }

    private static SelectWhereStep<Record> clinics(DSLContext query) {
        return query.select(List.of(
                        ClinicTable.ID,
                        ClinicTable.NAME,
                        ClinicTable.SETTING,
                        ClinicTable.PHONE,
                        ClinicTable.EMERGENCY_NUMBER,
                        ClinicTable.DEMO,
                        ClinicTable.VERSION))
                .from(ClinicTable.CLINIC);
    }

    private static Clinic clinic(Record row) {
        return new Clinic(
                row.get(ClinicTable.ID),
                row.get(ClinicTable.NAME),
                row.get(ClinicTable.SETTING),
                row.get(ClinicTable.PHONE),
                row.get(ClinicTable.EMERGENCY_NUMBER),
                row.get(ClinicTable.DEMO),
                row.get(ClinicTable.VERSION));
    }

    @Override
    public Saving<Clinic> change(Clinic clinic, Act act) {
        if (!clinic.id().equals(act.clinicId())) {
            throw new NotThere("clinic", clinic.id());
        }
        Chain chain = Chain.ofClinic(clinic.id());
        return trail.write(chain, tx -> {
            Clinic before = find(tx, clinic.id()).orElseThrow(() -> new NotThere("clinic", clinic.id()));
            if (before.version() != clinic.version()) {
                return new Saving.Stale<>(before);
            }
            tx.update(ClinicTable.CLINIC)
                    .set(ClinicTable.NAME, clinic.name())
                    .set(ClinicTable.SETTING, clinic.setting())
                    .set(ClinicTable.PHONE, clinic.phone())
                    .set(ClinicTable.EMERGENCY_NUMBER, clinic.emergencyNumber())
                    .set(ClinicTable.VERSION, before.version() + 1)
                    .where(ClinicTable.ID.eq(clinic.id()))
                    .execute();
            Clinic after = find(tx, clinic.id()).orElseThrow();
            trail.append(tx, chain, act, Note.changed("clinic", clinic.id(), after.version(), before, after));
            return new Saving.Saved<>(after);
        });
    }

    @Override
    public Setting setting(String clinicId, String key, String otherwise) {
        return db.read(query -> find(query, clinicId, key)).orElse(new Setting(clinicId, key, otherwise, 0));
    }

    private static Optional<Setting> find(DSLContext query, String clinicId, String key) {
        return settings(query)
                .where(ClinicSettingTable.CLINIC_ID.eq(clinicId), ClinicSettingTable.SETTING_KEY.eq(key))
                .fetchOptional(Records.mapping(Setting::new));
    }

    @Override
    public List<Setting> settings(String clinicId) {
        return db.read(query -> settings(query)
                .where(ClinicSettingTable.CLINIC_ID.eq(clinicId))
                .orderBy(ClinicSettingTable.SETTING_KEY)
                .fetch(Records.mapping(Setting::new)));
    }

    private static SelectWhereStep<org.jooq.Record4<String, String, String, Long>> settings(DSLContext query) {
        return query.select(
                        ClinicSettingTable.CLINIC_ID,
                        ClinicSettingTable.SETTING_KEY,
                        ClinicSettingTable.SETTING_VALUE,
                        ClinicSettingTable.VERSION)
                .from(ClinicSettingTable.CLINIC_SETTING);
    }

    @Override
    public Saving<Setting> set(String key, long version, String value, Act act) {
        Chain chain = Chain.ofClinic(act.clinicId());
        return trail.write(chain, tx -> {
            Setting before = find(tx, act.clinicId(), key).orElse(new Setting(act.clinicId(), key, "", 0));
            if (before.version() != version) {
                return new Saving.Stale<>(before);
            }
            var after = new Setting(act.clinicId(), key, value, version + 1);
            tx.insertInto(ClinicSettingTable.CLINIC_SETTING)
                    .set(ClinicSettingTable.CLINIC_ID, act.clinicId())
                    .set(ClinicSettingTable.SETTING_KEY, key)
                    .set(ClinicSettingTable.SETTING_VALUE, value)
                    .set(ClinicSettingTable.VERSION, after.version())
                    .onConflict(ClinicSettingTable.CLINIC_ID, ClinicSettingTable.SETTING_KEY)
                    .doUpdate()
                    .set(ClinicSettingTable.SETTING_VALUE, value)
                    .set(ClinicSettingTable.VERSION, after.version())
                    .execute();
            trail.append(tx, chain, act, Note.changed("setting", key, after.version(), before, after));
            return new Saving.Saved<>(after);
        });
    }

    @Override
    public void setUpCode(String sha256, Instant expiresAt) {
        db.write(tx -> tx.insertInto(SetUpCodeTable.SET_UP_CODE)
                .set(SetUpCodeTable.ID, 1)
                .set(SetUpCodeTable.SHA256, sha256)
                .set(SetUpCodeTable.EXPIRES_AT, expiresAt)
                .onConflict(SetUpCodeTable.ID)
                .doUpdate()
                .set(SetUpCodeTable.SHA256, sha256)
                .set(SetUpCodeTable.EXPIRES_AT, expiresAt)
                .execute());
    }

    @Override
    public boolean useSetUpCode(String sha256, Instant now) {
        return db.write(tx -> tx.deleteFrom(SetUpCodeTable.SET_UP_CODE)
                        .where(SetUpCodeTable.SHA256.eq(sha256), SetUpCodeTable.EXPIRES_AT.gt(now))
                        .execute())
                == 1;
    }
}
