package slipway.store.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.chart.SupervisedTry;
import slipway.care.record.chart.TryEntry;
import slipway.care.record.chart.VisitRecord;
import slipway.care.record.chart.Visits;
import slipway.store.tables.SupervisedTryTable;
import slipway.store.tables.VisitTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;

/** Visits and tries in the database. */
final class VisitStore implements Visits {
    private final EpisodeWriter writer;

    VisitStore(EpisodeWriter writer) {
        this.writer = writer;
    }

    private SelectConditionStep<Record> select(DSLContext query, Condition which) {
        return query.select(List.of(
                        VisitTable.ID,
                        VisitTable.EPISODE_ID,
                        VisitTable.VISIT_NUMBER,
                        VisitTable.STAFF_ID,
                        VisitTable.STARTED_AT,
                        VisitTable.ENDED_AT,
                        VisitTable.VERSION))
                .from(VisitTable.VISIT)
                .where(VisitTable.EPISODE_ID.eq(writer.episodeId()), which);
    }

    private static VisitRecord visit(Record row) {
        return new VisitRecord(
                row.get(VisitTable.ID),
                row.get(VisitTable.EPISODE_ID),
                row.get(VisitTable.VISIT_NUMBER),
                row.get(VisitTable.STAFF_ID),
                row.get(VisitTable.STARTED_AT),
                Optional.ofNullable(row.get(VisitTable.ENDED_AT)),
                row.get(VisitTable.VERSION));
    }

    @Override
    public List<VisitRecord> list() {
        return writer.read(query -> select(query, DSL.trueCondition())
                .orderBy(VisitTable.VISIT_NUMBER)
                .fetch(VisitStore::visit));
    }

    @Override
    public Optional<VisitRecord> current() {
        return writer.read(query -> select(query, VisitTable.ENDED_AT.isNull())
                .orderBy(VisitTable.VISIT_NUMBER.desc())
                .limit(1)
                .fetchOptional(VisitStore::visit));
    }

    private VisitRecord get(DSLContext query, String visitId) {
        return select(query, VisitTable.ID.eq(visitId))
                .fetchOptional(VisitStore::visit)
                .orElseThrow(() -> new NotThere("visit", visitId));
    }

    @Override
    public VisitRecord start() {
        return writer.write(tx -> {
            int last = select(tx, DSL.trueCondition())
                    .orderBy(VisitTable.VISIT_NUMBER.desc())
                    .limit(1)
                    .fetchOptional(VisitTable.VISIT_NUMBER)
                    .orElse(0);
            var visit = new VisitRecord(
                    writer.newId(), writer.episodeId(), last + 1, writer.user(), writer.now(), Optional.empty(), 1);
            tx.insertInto(VisitTable.VISIT)
                    .set(VisitTable.ID, visit.id())
                    .set(VisitTable.EPISODE_ID, visit.episodeId())
                    .set(VisitTable.VISIT_NUMBER, visit.number())
                    .set(VisitTable.STAFF_ID, visit.staffId())
                    .set(VisitTable.STARTED_AT, visit.startedAt())
                    .set(VisitTable.VERSION, visit.version())
                    .execute();
            writer.note(tx, Note.created("visit", visit.id(), 1, visit));
            return visit;
        });
    }

    @Override
    public Saving<VisitRecord> end(String visitId, long version) {
        return writer.write(tx -> {
            VisitRecord before = get(tx, visitId);
            if (before.version() != version) {
                return new Saving.Stale<>(before);
            }
            tx.update(VisitTable.VISIT)
                    .set(VisitTable.ENDED_AT, writer.now())
                    .set(VisitTable.VERSION, version + 1)
                    .where(VisitTable.ID.eq(visitId))
                    .execute();
            VisitRecord after = get(tx, visitId);
            writer.note(tx, Note.changed("visit", visitId, after.version(), before, after));
            return new Saving.Saved<>(after);
        });
    }

    @Override
    public SupervisedTry addTry(String visitId, int planVersion, TryEntry entry) {
        return writer.write(tx -> {
            VisitRecord visit = get(tx, visitId);
            var done = new SupervisedTry(
                    writer.newId(), writer.episodeId(), visit.id(), planVersion, entry, writer.now(), writer.user());
            insert(tx, done);
            writer.note(tx, Note.created("try", done.id(), 0, done));
            return done;
        });
    }

    private static void insert(DSLContext tx, SupervisedTry done) {
        TryEntry entry = done.entry();
        tx.insertInto(SupervisedTryTable.SUPERVISED_TRY)
                .set(SupervisedTryTable.ID, done.id())
                .set(SupervisedTryTable.EPISODE_ID, done.episodeId())
                .set(SupervisedTryTable.VISIT_ID, done.visitId())
                .set(SupervisedTryTable.PLAN_NUMBER, done.planVersion())
                .set(SupervisedTryTable.EXERCISE_ID, entry.exerciseId())
                .set(SupervisedTryTable.REPETITIONS, entry.repetitions())
                .set(SupervisedTryTable.WORST, entry.worst())
                .set(SupervisedTryTable.SETTLE_MINUTES, boxed(entry.settleMinutes()))
                .set(SupervisedTryTable.RETEST_ONSET_DEG, boxed(entry.retestOnsetDeg()))
                .set(SupervisedTryTable.RETEST_WEAKER, entry.retestWeaker().orElse(null))
                .set(SupervisedTryTable.RELEASED, entry.released())
                .set(SupervisedTryTable.REMARK, entry.remark().orElse(null))
                .set(SupervisedTryTable.AT, done.at())
                .set(SupervisedTryTable.STAFF_ID, done.staffId())
                .execute();
    }

    @Override
    public List<SupervisedTry> tries() {
        return writer.read(query -> query.select(List.of(
                        SupervisedTryTable.ID,
                        SupervisedTryTable.EPISODE_ID,
                        SupervisedTryTable.VISIT_ID,
                        SupervisedTryTable.PLAN_NUMBER,
                        SupervisedTryTable.EXERCISE_ID,
                        SupervisedTryTable.REPETITIONS,
                        SupervisedTryTable.WORST,
                        SupervisedTryTable.SETTLE_MINUTES,
                        SupervisedTryTable.RETEST_ONSET_DEG,
                        SupervisedTryTable.RETEST_WEAKER,
                        SupervisedTryTable.RELEASED,
                        SupervisedTryTable.REMARK,
                        SupervisedTryTable.AT,
                        SupervisedTryTable.STAFF_ID))
                .from(SupervisedTryTable.SUPERVISED_TRY)
                .where(SupervisedTryTable.EPISODE_ID.eq(writer.episodeId()))
                .orderBy(SupervisedTryTable.AT, SupervisedTryTable.ID)
                .fetch(VisitStore::supervised));
    }

    private static SupervisedTry supervised(Record row) {
        return new SupervisedTry(
                row.get(SupervisedTryTable.ID),
                row.get(SupervisedTryTable.EPISODE_ID),
                row.get(SupervisedTryTable.VISIT_ID),
                row.get(SupervisedTryTable.PLAN_NUMBER),
                new TryEntry(
                        row.get(SupervisedTryTable.EXERCISE_ID),
                        row.get(SupervisedTryTable.REPETITIONS),
                        row.get(SupervisedTryTable.WORST),
                        number(row.get(SupervisedTryTable.SETTLE_MINUTES)),
                        number(row.get(SupervisedTryTable.RETEST_ONSET_DEG)),
                        Optional.ofNullable(row.get(SupervisedTryTable.RETEST_WEAKER)),
                        row.get(SupervisedTryTable.RELEASED),
                        Optional.ofNullable(row.get(SupervisedTryTable.REMARK))),
                row.get(SupervisedTryTable.AT),
                row.get(SupervisedTryTable.STAFF_ID));
    }

    private static OptionalDouble number(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static @Nullable Double boxed(OptionalDouble value) {
        return value.isPresent() ? (Double) value.getAsDouble() : null;
    }
}
