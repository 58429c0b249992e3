package slipway.store.remind;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;
import slipway.care.record.remind.Consent;
import slipway.care.record.remind.Due;
import slipway.care.record.remind.MailDay;
import slipway.care.record.remind.Reminders;
import slipway.exercises.exercise.Language;
import slipway.store.tables.CheckInTable;
import slipway.store.tables.EpisodeTable;
import slipway.store.tables.PersonTable;
import slipway.store.tables.ReminderConsentTable;
import slipway.store.tables.ReminderDayTable;

/** Whose reminder of a day is to be decided or tried again. */
final class DueQuery {
    private static final Field<LocalDate> LAST_SENT = DSL.field(DSL.select(DSL.max(ReminderDayTable.DUE_ON))
            .from(ReminderDayTable.REMINDER_DAY)
            .where(ReminderDayTable.PERSON_ID.eq(PersonTable.ID), ReminderDayTable.STATE.eq(MailDay.SENT)));

    private static final Field<Instant> HEARD = DSL.field(DSL.select(DSL.max(CheckInTable.RECEIVED_AT))
            .from(CheckInTable.CHECK_IN)
            .join(EpisodeTable.EPISODE)
            .on(EpisodeTable.ID.eq(CheckInTable.EPISODE_ID))
            .where(EpisodeTable.PERSON_ID.eq(PersonTable.ID)));

    private DueQuery() {}

    static List<Due> of(DSLContext query, LocalDate day, int hour, Instant now, int most) {
        Condition sameDay = ReminderDayTable.PERSON_ID.eq(PersonTable.ID).and(ReminderDayTable.DUE_ON.eq(day));
        Condition undecided = ReminderDayTable.STATE
                .isNull()
                .and(ReminderConsentTable.SEND_HOUR.between(hour - Reminders.LATE_HOURS + 1, hour));
        Condition again = ReminderDayTable.STATE.eq(MailDay.TRYING).and(ReminderDayTable.NEXT_TRY.le(now));
        return query
                .select(
                        PersonTable.ID,
                        PersonTable.CLINIC_ID,
                        PersonTable.EMAIL,
                        PersonTable.LANGUAGE,
                        ReminderConsentTable.ADDRESS_SHA256,
                        ReminderDayTable.ATTEMPTS,
                        LAST_SENT.as("last_sent"),
                        HEARD.as("heard"))
                .from(ReminderConsentTable.REMINDER_CONSENT)
                .join(PersonTable.PERSON)
                .on(PersonTable.ID.eq(ReminderConsentTable.PERSON_ID))
                .leftJoin(ReminderDayTable.REMINDER_DAY)
                .on(sameDay)
                .where(
                        ReminderConsentTable.ENDED_AT.isNull(),
                        PersonTable.ERASED_AT.isNull(),
                        PersonTable.EMAIL.isNotNull(),
                        undecided.or(again))
                .orderBy(PersonTable.ID)
                .fetch()
                .stream()
                .filter(row ->
                        Consent.digest(row.get(PersonTable.EMAIL)).equals(row.get(ReminderConsentTable.ADDRESS_SHA256)))
                .limit(most)
                .map(DueQuery::due)
                .toList();
    }

    private static Due due(Record row) {
        return new Due(
                row.get(PersonTable.ID),
                row.get(PersonTable.CLINIC_ID),
                row.get(PersonTable.EMAIL),
                Language.find(row.get(PersonTable.LANGUAGE)).orElseThrow(),
                Optional.ofNullable(row.get(ReminderDayTable.ATTEMPTS)).orElse(0),
                Optional.ofNullable(row.get(LAST_SENT.as("last_sent"))),
                Optional.ofNullable(row.get(HEARD.as("heard"))));
    }
}
