package slipway.store.remind;

import java.util.Optional;
import org.jooq.DSLContext;
import slipway.care.record.remind.Consent;
import slipway.store.tables.ReminderConsentTable;

/** Rows of consents. */
final class ConsentRows {
    private ConsentRows() {}

    static Optional<Consent> find(DSLContext query, String personId) {
        return query.select(
                        ReminderConsentTable.SEND_HOUR,
                        ReminderConsentTable.ADDRESS_SHA256,
                        ReminderConsentTable.SAID_AT,
                        ReminderConsentTable.WRITTEN_BY,
                        ReminderConsentTable.ENDED_AT,
                        ReminderConsentTable.ENDED_BY_PERSON)
                .from(ReminderConsentTable.REMINDER_CONSENT)
                .where(ReminderConsentTable.PERSON_ID.eq(personId))
                .fetchOptional(row -> new Consent(
                        row.value1(),
                        row.value2(),
                        row.value3(),
                        row.value4(),
                        Optional.ofNullable(row.value5()),
                        row.value6()));
    }

    static void put(DSLContext tx, String personId, Consent consent) {
        tx.deleteFrom(ReminderConsentTable.REMINDER_CONSENT)
                .where(ReminderConsentTable.PERSON_ID.eq(personId))
                .execute();
        tx.insertInto(ReminderConsentTable.REMINDER_CONSENT)
                .set(ReminderConsentTable.PERSON_ID, personId)
                .set(ReminderConsentTable.SEND_HOUR, consent.hour())
                .set(ReminderConsentTable.ADDRESS_SHA256, consent.addressSha256())
                .set(ReminderConsentTable.SAID_AT, consent.saidAt())
                .set(ReminderConsentTable.WRITTEN_BY, consent.writtenBy())
                .set(ReminderConsentTable.ENDED_AT, consent.endedAt().orElse(null))
                .set(ReminderConsentTable.ENDED_BY_PERSON, consent.endedByPerson())
                .execute();
    }
}
