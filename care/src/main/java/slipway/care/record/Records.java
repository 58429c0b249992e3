package slipway.care.record;

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

/**
 * Everything that is kept, by subject. Each method that changes something is one transaction, its entry in the trail
 * included: both are there or neither.
 */
public interface Records {
    People people();

    Charts charts();

    Drafts drafts();

    Caseload caseload();

    Alerts alerts();

    Staff staff();

    Passkeys passkeys();

    Clinics clinics();

    ClinicCodes codes();

    Links links();

    ApiTokens tokens();

    Reminders reminders();

    Trail trail();
}
