package slipway.store.caseload;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.DSL;
import slipway.care.record.caseload.TodayRow;
import slipway.care.record.chart.EpisodeState;
import slipway.store.tables.AlertTable;
import slipway.store.tables.CheckInTable;
import slipway.store.tables.EpisodeTable;
import slipway.store.tables.IntakeTable;
import slipway.store.tables.PersonTable;
import slipway.store.tables.PlanTable;
import slipway.store.tables.VisitTable;

/** Open episodes with the newest of everything that a list shows, in one query. */
final class TodayQuery {
    /** Written out, not bound: only so do the indexes over open episodes and open alerts apply. */
    static final Condition IS_OPEN = EpisodeTable.STATE.ne(DSL.inline(EpisodeState.CLOSED, EpisodeTable.STATE));

    private static final Condition ALERT_IS_OPEN = AlertTable.ACKNOWLEDGED_AT.isNull();

    private static final Field<Instant> LAST_VISIT = DSL.field(DSL.select(DSL.max(VisitTable.STARTED_AT))
                    .from(VisitTable.VISIT)
                    .where(VisitTable.EPISODE_ID.eq(EpisodeTable.ID)))
            .as("last_visit");
    private static final Field<Integer> OPEN_ALERTS = DSL.field(DSL.selectCount()
                    .from(AlertTable.ALERT)
                    .where(AlertTable.EPISODE_ID.eq(EpisodeTable.ID), ALERT_IS_OPEN))
            .as("open_alerts");
    private static final Field<Instant> FIRST_ALERT = DSL.field(DSL.select(DSL.min(AlertTable.RAISED_AT))
                    .from(AlertTable.ALERT)
                    .where(AlertTable.EPISODE_ID.eq(EpisodeTable.ID), ALERT_IS_OPEN))
            .as("first_alert");

    private static final Field<Instant> TOLD = DSL.field(DSL.select(DSL.max(IntakeTable.TOLD_AT))
                    .from(IntakeTable.INTAKE)
                    .where(IntakeTable.EPISODE_ID.eq(EpisodeTable.ID), IntakeTable.WHOLE.isTrue()))
            .as("told_at");

    private TodayQuery() {}

    /** Rows of open episodes that meet a condition, those with the longest waiting alert first. */
    static List<TodayRow> rows(DSLContext query, Condition which, int limit) {
        return query.select(
                        EpisodeTable.ID,
                        EpisodeTable.PERSON_ID,
                        PersonTable.NAME,
                        EpisodeTable.SIDE,
                        EpisodeTable.THERAPIST_ID,
                        EpisodeTable.STATE,
                        EpisodeTable.OPENED_AT)
                .select(PlanTable.PLAN_NUMBER, PlanTable.STATE, PlanTable.STATE_AT)
                .select(CheckInTable.RECEIVED_AT, CheckInTable.EXERCISE_ID, CheckInTable.BODY)
                .select(LAST_VISIT, TOLD, OPEN_ALERTS, FIRST_ALERT)
                .from(EpisodeTable.EPISODE)
                .join(PersonTable.PERSON)
                .on(PersonTable.ID.eq(EpisodeTable.PERSON_ID))
                .leftJoin(PlanTable.PLAN)
                .on(PlanTable.EPISODE_ID.eq(EpisodeTable.ID), PlanTable.PLAN_NUMBER.eq(newestPlan()))
                .leftJoin(CheckInTable.CHECK_IN)
                .on(CheckInTable.EPISODE_ID.eq(EpisodeTable.ID), CheckInTable.ID.eq(newestCheckIn()))
                .where(IS_OPEN, which)
                .orderBy(
                        DSL.field(DSL.name("first_alert")).asc().nullsLast(),
                        EpisodeTable.OPENED_AT.desc(),
                        EpisodeTable.ID)
                .limit(limit)
                .fetch(TodayQuery::row);
    }

    private static Field<Integer> newestPlan() {
        var other = PlanTable.PLAN.as("other_plan");
        Field<Integer> number = DSL.field(DSL.name("other_plan", "plan_number"), Integer.class);
        return DSL.field(DSL.select(DSL.max(number))
                .from(other)
                .where(DSL.field(DSL.name("other_plan", "episode_id"), String.class)
                        .eq(EpisodeTable.ID)));
    }

    private static Field<String> newestCheckIn() {
        var other = CheckInTable.CHECK_IN.as("other_check_in");
        Field<String> id = DSL.field(DSL.name("other_check_in", "id"), String.class);
        return DSL.field(DSL.select(id)
                .from(other)
                .where(DSL.field(DSL.name("other_check_in", "episode_id"), String.class)
                        .eq(EpisodeTable.ID))
                .orderBy(DSL.field(DSL.name("other_check_in", "received_at_us")).desc(), id.desc())
                .limit(DSL.inline(1)));
    }

    private static TodayRow row(Record row) {
        Optional<TodayRow.NewestPlan> plan = Optional.ofNullable(row.get(PlanTable.PLAN_NUMBER))
                .map(number -> new TodayRow.NewestPlan(number, row.get(PlanTable.STATE), row.get(PlanTable.STATE_AT)));
        Optional<TodayRow.LastCheckIn> checkIn = Optional.ofNullable(row.get(CheckInTable.RECEIVED_AT))
                .map(at -> new TodayRow.LastCheckIn(at, row.get(CheckInTable.EXERCISE_ID), row.get(CheckInTable.BODY)));
        return new TodayRow(
                row.get(EpisodeTable.ID),
                row.get(EpisodeTable.PERSON_ID),
                row.get(PersonTable.NAME),
                row.get(EpisodeTable.SIDE),
                row.get(EpisodeTable.THERAPIST_ID),
                row.get(EpisodeTable.STATE),
                row.get(EpisodeTable.OPENED_AT),
                plan,
                Optional.ofNullable(row.get(LAST_VISIT)),
                checkIn,
                Optional.ofNullable(row.get(TOLD)),
                row.get(OPEN_ALERTS),
                Optional.ofNullable(row.get(FIRST_ALERT)));
    }
}
