package slipway.store.follow;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import org.jooq.impl.DSL;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.follow.Goal;
import slipway.care.record.follow.Goals;
import slipway.store.tables.GoalTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;
import tools.jackson.databind.node.ObjectNode;

/** Goals of one episode in the database. */
public final class GoalStore implements Goals {
    private final EpisodeWriter writer;

    public GoalStore(EpisodeWriter writer) {
        this.writer = writer;
    }

    @Override
    public Goal add(String words, Optional<String> measureId, ObjectNode target, Optional<LocalDate> due) {
        var goal = new Goal(
                writer.newId(),
                writer.episodeId(),
                words,
                measureId,
                target,
                due,
                "open",
                1,
                writer.now(),
                writer.user());
        return writer.write(tx -> {
            tx.insertInto(GoalTable.GOAL)
                    .set(GoalTable.ID, goal.id())
                    .set(GoalTable.EPISODE_ID, goal.episodeId())
                    .set(GoalTable.WORDS, words)
                    .set(GoalTable.MEASURE_ID, measureId.orElse(null))
                    .set(GoalTable.TARGET, target)
                    .set(GoalTable.DUE_ON, due.orElse(null))
                    .set(GoalTable.STATE, goal.state())
                    .set(GoalTable.VERSION, goal.version())
                    .set(GoalTable.CREATED_AT, writer.now())
                    .set(GoalTable.CHANGED_AT, goal.changedAt())
                    .set(GoalTable.CHANGED_BY, goal.changedBy())
                    .execute();
            writer.note(tx, Note.created("goal", goal.id(), 1, goal));
            return goal;
        });
    }

    @Override
    public Saving<Goal> change(Goal goal) {
        return writer.write(tx -> {
            Goal before = select(tx, GoalTable.ID.eq(goal.id()))
                    .fetchOptional(GoalStore::goal)
                    .orElseThrow(() -> new NotThere("goal", goal.id()));
            if (before.version() != goal.version()) {
                return new Saving.Stale<>(before);
            }
            tx.update(GoalTable.GOAL)
                    .set(GoalTable.WORDS, goal.words())
                    .set(GoalTable.MEASURE_ID, goal.measureId().orElse(null))
                    .set(GoalTable.TARGET, goal.target())
                    .set(GoalTable.DUE_ON, goal.due().orElse(null))
                    .set(GoalTable.STATE, goal.state())
                    .set(GoalTable.VERSION, before.version() + 1)
                    .set(GoalTable.CHANGED_AT, writer.now())
                    .set(GoalTable.CHANGED_BY, writer.user())
                    .where(GoalTable.ID.eq(goal.id()))
                    .execute();
            Goal after = select(tx, GoalTable.ID.eq(goal.id())).fetchSingle(GoalStore::goal);
            writer.note(tx, Note.changed("goal", goal.id(), after.version(), before, after));
            return new Saving.Saved<>(after);
        });
    }

    @Override
    public List<Goal> list() {
        return writer.read(query -> select(query, DSL.trueCondition())
                .orderBy(GoalTable.CREATED_AT, GoalTable.ID)
                .fetch(GoalStore::goal));
    }

    private SelectConditionStep<Record> select(DSLContext query, Condition which) {
        return query.select(List.of(
                        GoalTable.ID,
                        GoalTable.EPISODE_ID,
                        GoalTable.WORDS,
                        GoalTable.MEASURE_ID,
                        GoalTable.TARGET,
                        GoalTable.DUE_ON,
                        GoalTable.STATE,
                        GoalTable.VERSION,
                        GoalTable.CHANGED_AT,
                        GoalTable.CHANGED_BY))
                .from(GoalTable.GOAL)
                .where(GoalTable.EPISODE_ID.eq(writer.episodeId()), which);
    }

    private static Goal goal(Record row) {
        return new Goal(
                row.get(GoalTable.ID),
                row.get(GoalTable.EPISODE_ID),
                row.get(GoalTable.WORDS),
                Optional.ofNullable(row.get(GoalTable.MEASURE_ID)),
                row.get(GoalTable.TARGET),
                Optional.ofNullable(row.get(GoalTable.DUE_ON)),
                row.get(GoalTable.STATE),
                row.get(GoalTable.VERSION),
                row.get(GoalTable.CHANGED_AT),
                row.get(GoalTable.CHANGED_BY));
    }
}
