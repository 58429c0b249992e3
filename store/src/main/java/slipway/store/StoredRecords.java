package slipway.store;

import slipway.care.record.Records;
import slipway.care.record.access.ApiTokens;
import slipway.care.record.access.Clinics;
import slipway.care.record.access.Links;
import slipway.care.record.access.Passkeys;
import slipway.care.record.access.Staff;
import slipway.care.record.caseload.Caseload;
import slipway.care.record.chart.Charts;
import slipway.care.record.codes.ClinicCodes;
import slipway.care.record.draft.Drafts;
import slipway.care.record.follow.Alerts;
import slipway.care.record.person.People;
import slipway.care.record.remind.Reminders;
import slipway.care.record.trail.Trail;
import slipway.store.access.ApiTokenStore;
import slipway.store.access.ClinicStore;
import slipway.store.access.LinkStore;
import slipway.store.access.PasskeyStore;
import slipway.store.access.Scopes;
import slipway.store.access.StaffStore;
import slipway.store.caseload.CaseloadStore;
import slipway.store.chart.ChartsStore;
import slipway.store.codes.ClinicCodesStore;
import slipway.store.db.Db;
import slipway.store.db.Ids;
import slipway.store.draft.DraftStore;
import slipway.store.follow.AlertStore;
import slipway.store.person.PeopleStore;
import slipway.store.remind.ReminderStore;
import slipway.store.trail.TrailStore;
import slipway.store.trail.TrailWriter;

/** All ports over one database. */
record StoredRecords(
        People people,
        Charts charts,
        Drafts drafts,
        Caseload caseload,
        Alerts alerts,
        Staff staff,
        Passkeys passkeys,
        Clinics clinics,
        ClinicCodes codes,
        Links links,
        ApiTokens tokens,
        Reminders reminders,
        Trail trail)
        implements Records {
    StoredRecords(Db db) {
        this(db, new TrailWriter(db), new Ids(), new Scopes(db));
    }

    private StoredRecords(Db db, TrailWriter trail, Ids ids, Scopes scopes) {
        this(
                new PeopleStore(db, trail, ids, scopes),
                new ChartsStore(db, trail, ids, scopes),
                new DraftStore(db, scopes),
                new CaseloadStore(db, scopes),
                new AlertStore(db, trail, scopes),
                new StaffStore(db, trail, ids),
                new PasskeyStore(db, trail, ids),
                new ClinicStore(db, trail),
                new ClinicCodesStore(db, trail),
                new LinkStore(db, trail, ids, scopes),
                new ApiTokenStore(db, trail),
                new ReminderStore(db, trail, scopes),
                new TrailStore(db, trail));
    }
}
