package slipway.store.remind;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record2;
import org.jooq.impl.DSL;
import slipway.care.record.remind.Due;
import slipway.care.record.remind.MailDay;
import slipway.care.record.remind.MailFault;
import slipway.care.record.remind.SendingReport;
import slipway.store.db.Db;
import slipway.store.tables.PersonTable;
import slipway.store.tables.ReminderDayTable;
import slipway.store.tables.ReminderStopTable;

/** What was decided for each person and day. */
final class Days {
    private final Db db;

    Days(Db db) {
        this.db = db;
    }

    boolean take(Due due, LocalDate day, String stopSha256, Instant now, Instant again) {
        return db.write(tx -> {
            boolean mine = due.attempts() == 0
                    ? insert(tx, due.personId(), day, MailDay.TRYING, 1, now, again)
                    : countAttempt(tx, due, day, now, again);
            if (mine) {
                tx.insertInto(ReminderStopTable.REMINDER_STOP)
                        .set(ReminderStopTable.TOKEN_SHA256, stopSha256)
                        .set(ReminderStopTable.PERSON_ID, due.personId())
                        .set(ReminderStopTable.DUE_ON, day)
                        .execute();
            }
            return mine;
        });
    }

    private static boolean insert(
            DSLContext tx, String personId, LocalDate day, MailDay state, int attempts, Instant now, Instant again) {
        return tx.insertInto(ReminderDayTable.REMINDER_DAY)
                        .set(ReminderDayTable.PERSON_ID, personId)
                        .set(ReminderDayTable.DUE_ON, day)
                        .set(ReminderDayTable.STATE, state)
                        .set(ReminderDayTable.ATTEMPTS, attempts)
                        .set(ReminderDayTable.NEXT_TRY, again)
                        .set(ReminderDayTable.CHANGED_AT, now)
                        .onConflict(ReminderDayTable.PERSON_ID, ReminderDayTable.DUE_ON)
                        .doNothing()
                        .execute()
                == 1;
    }

    private static boolean countAttempt(DSLContext tx, Due due, LocalDate day, Instant now, Instant again) {
        return tx.update(ReminderDayTable.REMINDER_DAY)
                        .set(ReminderDayTable.ATTEMPTS, due.attempts() + 1)
                        .set(ReminderDayTable.NEXT_TRY, again)
                        .set(ReminderDayTable.CHANGED_AT, now)
                        .where(
                                row(due.personId(), day),
                                ReminderDayTable.STATE.eq(MailDay.TRYING),
                                ReminderDayTable.ATTEMPTS.eq(due.attempts()),
                                ReminderDayTable.NEXT_TRY.le(now))
                        .execute()
                == 1;
    }

    void sent(String personId, LocalDate day, Instant now) {
        db.write(tx -> tx.update(ReminderDayTable.REMINDER_DAY)
                .set(ReminderDayTable.STATE, MailDay.SENT)
                .set(ReminderDayTable.CHANGED_AT, now)
                .where(row(personId, day))
                .execute());
    }

    void failed(String personId, LocalDate day, MailFault fault, Instant now, Optional<Instant> again) {
        db.write(tx -> tx.update(ReminderDayTable.REMINDER_DAY)
                .set(ReminderDayTable.STATE, again.isPresent() ? MailDay.TRYING : MailDay.GIVEN_UP)
                .set(ReminderDayTable.NEXT_TRY, again.orElse(now))
                .set(ReminderDayTable.FAULT, fault)
                .set(ReminderDayTable.FAULT_AT, now)
                .set(ReminderDayTable.CHANGED_AT, now)
                .where(row(personId, day), ReminderDayTable.STATE.eq(MailDay.TRYING))
                .execute());
    }

    void notNeeded(Due due, LocalDate day, Instant now) {
        db.write(tx -> due.attempts() == 0
                ? insert(tx, due.personId(), day, MailDay.NOT_NEEDED, 0, now, now)
                : tx.update(ReminderDayTable.REMINDER_DAY)
                                .set(ReminderDayTable.STATE, MailDay.NOT_NEEDED)
                                .set(ReminderDayTable.CHANGED_AT, now)
                                .where(row(due.personId(), day), ReminderDayTable.STATE.eq(MailDay.TRYING))
                                .execute()
                        == 1);
    }

    private static Condition row(String personId, LocalDate day) {
        return ReminderDayTable.PERSON_ID.eq(personId).and(ReminderDayTable.DUE_ON.eq(day));
    }

    SendingReport report(String clinicId, LocalDate since) {
        Condition which = PersonTable.CLINIC_ID.eq(clinicId).and(ReminderDayTable.DUE_ON.ge(since));
        Condition failing = ReminderDayTable.STATE.eq(MailDay.TRYING).and(ReminderDayTable.FAULT.isNotNull());
        return db.readTogether(query -> {
            Optional<Record2<MailFault, Instant>> last = query.select(ReminderDayTable.FAULT, ReminderDayTable.FAULT_AT)
                    .from(ReminderDayTable.REMINDER_DAY)
                    .join(PersonTable.PERSON)
                    .on(PersonTable.ID.eq(ReminderDayTable.PERSON_ID))
                    .where(which, ReminderDayTable.FAULT.isNotNull())
                    .orderBy(ReminderDayTable.FAULT_AT.desc(), ReminderDayTable.PERSON_ID)
                    .limit(1)
                    .fetchOptional();
            return new SendingReport(
                    count(query, which.and(ReminderDayTable.STATE.eq(MailDay.SENT))),
                    count(query, which.and(failing)),
                    count(query, which.and(ReminderDayTable.STATE.eq(MailDay.GIVEN_UP))),
                    last.map(Record2::value1),
                    last.map(Record2::value2));
        });
    }

    private static int count(DSLContext query, Condition which) {
        Field<Integer> count = DSL.count();
        return query.select(count)
                .from(ReminderDayTable.REMINDER_DAY)
                .join(PersonTable.PERSON)
                .on(PersonTable.ID.eq(ReminderDayTable.PERSON_ID))
                .where(which)
                .fetchSingle(count);
    }

    void giveUpBefore(LocalDate day, Instant now) {
        Condition old = ReminderDayTable.DUE_ON.lt(day).and(ReminderDayTable.STATE.eq(MailDay.TRYING));
        // Asked first without writing, so that idle servers write nothing.
        if (db.read(query -> query.fetchExists(ReminderDayTable.REMINDER_DAY, old))) {
            db.write(tx -> tx.update(ReminderDayTable.REMINDER_DAY)
                    .set(ReminderDayTable.STATE, MailDay.GIVEN_UP)
                    .set(ReminderDayTable.CHANGED_AT, now)
                    .where(old)
                    .execute());
        }
    }

    void purge(LocalDate day) {
        db.write(tx -> tx.deleteFrom(ReminderDayTable.REMINDER_DAY)
                        .where(ReminderDayTable.DUE_ON.lt(day))
                        .execute()
                + tx.deleteFrom(ReminderStopTable.REMINDER_STOP)
                        .where(ReminderStopTable.DUE_ON.lt(day))
                        .execute());
    }
}
