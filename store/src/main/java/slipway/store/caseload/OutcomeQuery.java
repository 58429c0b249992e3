package slipway.store.caseload;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Record2;
import org.jooq.Table;
import org.jooq.impl.DSL;
import slipway.care.record.caseload.OutcomeAsk;
import slipway.care.record.caseload.OutcomeRow;
import slipway.store.tables.CheckInTable;
import slipway.store.tables.EpisodeTable;
import slipway.store.tables.GoalTable;
import slipway.store.tables.MeasureEntryTable;
import slipway.store.tables.PersonTable;
import slipway.store.tables.PlanTable;
import slipway.store.tables.VisitTable;

/**
 * What counts of many episodes, in six queries however many they are. Of scores the database hands out the first and the
 * last of each measure, of reports a count.
 */
final class OutcomeQuery {
    private static final long MICROS_A_DAY = 86_400_000_000L;
    private static final Field<Long> RECEIVED_US = DSL.field(DSL.name("check_in", "received_at_us"), Long.class);
    private static final Field<Integer> UP = DSL.field(DSL.name("ends", "up"), Integer.class);
    private static final Field<Integer> DOWN = DSL.field(DSL.name("ends", "down"), Integer.class);

    private final DSLContext query;
    private final Condition seen;
    private final LocalDate recentFrom;

    private OutcomeQuery(DSLContext query, Condition seen, LocalDate recentFrom) {
        this.query = query;
        this.seen = seen;
        this.recentFrom = recentFrom;
    }

    /** Of the episodes that meet a condition and were asked for; those of erased people are not among them. */
    static OutcomeQuery of(DSLContext query, Condition which, OutcomeAsk ask) {
        var newest = query.select(EpisodeTable.ID.as("id"))
                .from(EpisodeTable.EPISODE)
                .where(
                        which,
                        EpisodeTable.OPENED_AT.ge(ask.from()),
                        EpisodeTable.OPENED_AT.lt(ask.until()),
                        ask.after().map(OutcomeQuery::behind).orElseGet(DSL::trueCondition),
                        DSL.notExists(DSL.selectOne()
                                .from(PersonTable.PERSON)
                                .where(PersonTable.ID.eq(EpisodeTable.PERSON_ID), PersonTable.ERASED_AT.isNotNull())))
                .orderBy(EpisodeTable.OPENED_AT.desc(), EpisodeTable.ID.desc())
                .limit(ask.limit())
                .asTable("newest");
        return new OutcomeQuery(
                query,
                EpisodeTable.ID.in(query.select(DSL.field(DSL.name("newest", "id"), String.class))
                        .from(newest)),
                ask.recentFrom());
    }

    private static Condition behind(OutcomeRow.Place place) {
        return DSL.row(EpisodeTable.OPENED_AT, EpisodeTable.ID).lt(place.openedAt(), place.episodeId());
    }

    /** The rows, newest first. */
    List<OutcomeRow> rows() {
        Map<String, Instant> visits = times(DSL.min(VisitTable.STARTED_AT), VisitTable.VISIT, VisitTable.EPISODE_ID);
        Map<String, Instant> homes = times(DSL.min(PlanTable.RELEASED_AT), PlanTable.PLAN, PlanTable.EPISODE_ID);
        Map<String, Integer> reports = reportDays();
        Set<String> reached = goalsReached();
        Map<String, List<OutcomeRow.Taken>> ends = ends(DSL.trueCondition());
        Map<String, List<OutcomeRow.Taken>> recent =
                ends(MeasureEntryTable.TAKEN_ON.ge(recentFrom).and(TodayQuery.IS_OPEN));
        return query.select(EpisodeTable.ID, EpisodeTable.THERAPIST_ID, EpisodeTable.OPENED_AT, EpisodeTable.CLOSED_AT)
                .from(EpisodeTable.EPISODE)
                .where(seen)
                .orderBy(EpisodeTable.OPENED_AT.desc(), EpisodeTable.ID.desc())
                .fetch()
                .map(row -> new OutcomeRow(
                        new OutcomeRow.Place(row.value3(), row.value1()),
                        row.value2(),
                        visits.getOrDefault(row.value1(), row.value3()),
                        Optional.ofNullable(row.value4()),
                        Optional.ofNullable(homes.get(row.value1())),
                        reports.getOrDefault(row.value1(), 0),
                        reached.contains(row.value1()),
                        ends.getOrDefault(row.value1(), List.of()),
                        recent.getOrDefault(row.value1(), List.of())));
    }

    private Map<String, Instant> times(Field<Instant> earliest, Table<Record> table, Field<String> episode) {
        return query.select(episode, earliest)
                .from(table)
                .join(EpisodeTable.EPISODE)
                .on(EpisodeTable.ID.eq(episode))
                .where(seen)
                .groupBy(episode)
                .having(earliest.isNotNull())
                .fetchMap(episode, earliest);
    }

    private Map<String, Integer> reportDays() {
        Field<Integer> days = DSL.countDistinct(RECEIVED_US.div(DSL.inline(MICROS_A_DAY)));
        return query
                .select(CheckInTable.EPISODE_ID, days)
                .from(CheckInTable.CHECK_IN)
                .join(EpisodeTable.EPISODE)
                .on(EpisodeTable.ID.eq(CheckInTable.EPISODE_ID))
                .where(seen)
                .groupBy(CheckInTable.EPISODE_ID)
                .fetch()
                .stream()
                .collect(Collectors.toMap(Record2::value1, Record2::value2));
    }

    private Set<String> goalsReached() {
        return query.select(GoalTable.EPISODE_ID)
                .from(GoalTable.GOAL)
                .join(EpisodeTable.EPISODE)
                .on(EpisodeTable.ID.eq(GoalTable.EPISODE_ID))
                .where(seen, GoalTable.STATE.ne("dropped"))
                .groupBy(GoalTable.EPISODE_ID)
                .having(DSL.count(DSL.when(GoalTable.STATE.ne("reached"), 1)).eq(0))
                .fetchSet(GoalTable.EPISODE_ID);
    }

    /** The first and the last entry of each measure of each episode; corrected ones left out. */
    private Map<String, List<OutcomeRow.Taken>> ends(Condition which) {
        var corrected = MeasureEntryTable.MEASURE_ENTRY.as("corrected");
        Field<String> replaces = DSL.field(DSL.name("corrected", "replaces_id"), String.class);
        var all = query.select(
                        MeasureEntryTable.EPISODE_ID.as("episode_id"),
                        MeasureEntryTable.MEASURE_ID.as("measure_id"),
                        MeasureEntryTable.TAKEN_ON.as("taken_on"),
                        MeasureEntryTable.BODY.as("body"),
                        place(true).as("up"),
                        place(false).as("down"))
                .from(MeasureEntryTable.MEASURE_ENTRY)
                .join(EpisodeTable.EPISODE)
                .on(EpisodeTable.ID.eq(MeasureEntryTable.EPISODE_ID))
                .where(seen, which)
                .andNotExists(DSL.selectOne().from(corrected).where(replaces.eq(MeasureEntryTable.ID)))
                .asTable("ends");
        Field<String> episode = DSL.field(DSL.name("ends", "episode_id"), String.class);
        Field<String> measure = DSL.field(DSL.name("ends", "measure_id"), String.class);
        Field<LocalDate> day = DSL.field(DSL.name("ends", "taken_on"), MeasureEntryTable.TAKEN_ON.getDataType());
        var body = DSL.field(DSL.name("ends", "body"), MeasureEntryTable.BODY.getDataType());
        return query
                .select(episode, measure, day, body)
                .from(all)
                .where(UP.eq(1).or(DOWN.eq(1)))
                .orderBy(episode, measure, day, UP)
                .fetch()
                .stream()
                .collect(Collectors.groupingBy(
                        row -> row.value1(),
                        Collectors.mapping(
                                row -> new OutcomeRow.Taken(row.value2(), row.value3(), row.value4()),
                                Collectors.toList())));
    }

    private static Field<Integer> place(boolean up) {
        var entries = DSL.rowNumber().over().partitionBy(MeasureEntryTable.EPISODE_ID, MeasureEntryTable.MEASURE_ID);
        return up
                ? entries.orderBy(MeasureEntryTable.TAKEN_ON, MeasureEntryTable.AT, MeasureEntryTable.ID)
                : entries.orderBy(
                        MeasureEntryTable.TAKEN_ON.desc(), MeasureEntryTable.AT.desc(), MeasureEntryTable.ID.desc());
    }
}
