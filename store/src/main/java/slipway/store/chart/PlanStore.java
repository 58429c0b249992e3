package slipway.store.chart;

import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import org.jooq.impl.DSL;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.chart.PlanDraft;
import slipway.care.record.chart.PlanState;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.chart.Plans;
import slipway.care.record.chart.Stamp;
import slipway.care.record.trail.Action;
import slipway.store.tables.PlanTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;

/** Versions of the plan in the database. What a version says is written once; only its state moves. */
final class PlanStore implements Plans {
    private final EpisodeWriter writer;

    PlanStore(EpisodeWriter writer) {
        this.writer = writer;
    }

    private SelectConditionStep<Record> select(DSLContext query, Condition which) {
        return query.select(List.of(
                        PlanTable.EPISODE_ID,
                        PlanTable.PLAN_NUMBER,
                        PlanTable.INPUTS,
                        PlanTable.INPUT_VERSIONS,
                        PlanTable.INPUT_DIGEST,
                        PlanTable.PROGRAM_VERSION,
                        PlanTable.DATA_DIGEST,
                        PlanTable.BODY,
                        PlanTable.CEILINGS,
                        PlanTable.HOME,
                        PlanTable.STATE,
                        PlanTable.MADE_AT,
                        PlanTable.MADE_BY,
                        PlanTable.STATE_AT,
                        PlanTable.STATE_BY,
                        PlanTable.RELEASED_AT))
                .from(PlanTable.PLAN)
                .where(PlanTable.EPISODE_ID.eq(writer.episodeId()), which);
    }

    private static PlanVersion plan(Record row) {
        var draft = new PlanDraft(
                row.get(PlanTable.INPUTS),
                InputVersions.inputs(row.get(PlanTable.INPUT_VERSIONS), row.get(PlanTable.INPUT_DIGEST)),
                new Stamp(row.get(PlanTable.PROGRAM_VERSION), row.get(PlanTable.DATA_DIGEST)),
                row.get(PlanTable.BODY),
                row.get(PlanTable.CEILINGS),
                row.get(PlanTable.HOME));
        return new PlanVersion(
                row.get(PlanTable.EPISODE_ID),
                row.get(PlanTable.PLAN_NUMBER),
                draft,
                row.get(PlanTable.STATE),
                row.get(PlanTable.MADE_AT),
                row.get(PlanTable.MADE_BY),
                row.get(PlanTable.STATE_AT),
                row.get(PlanTable.STATE_BY),
                Optional.ofNullable(row.get(PlanTable.RELEASED_AT)));
    }

    @Override
    public PlanVersion add(PlanDraft draft) {
        return writer.write(tx -> {
            int last = select(tx, DSL.trueCondition())
                    .orderBy(PlanTable.PLAN_NUMBER.desc())
                    .limit(1)
                    .fetchOptional(PlanTable.PLAN_NUMBER)
                    .orElse(0);
            var plan = new PlanVersion(
                    writer.episodeId(),
                    last + 1,
                    draft,
                    PlanState.PROPOSED,
                    writer.now(),
                    writer.user(),
                    writer.now(),
                    writer.user(),
                    Optional.empty());
            insert(tx, plan);
            writer.note(tx, Note.created("plan", writer.episodeId(), plan.number(), plan));
            return plan;
        });
    }

    private static void insert(DSLContext tx, PlanVersion plan) {
        PlanDraft draft = plan.plan();
        tx.insertInto(PlanTable.PLAN)
                .set(PlanTable.EPISODE_ID, plan.episodeId())
                .set(PlanTable.PLAN_NUMBER, plan.number())
                .set(PlanTable.INPUTS, draft.inputs())
                .set(PlanTable.INPUT_VERSIONS, InputVersions.json(draft.versions()))
                .set(PlanTable.INPUT_DIGEST, draft.versions().digest())
                .set(PlanTable.PROGRAM_VERSION, draft.stamp().programVersion())
                .set(PlanTable.DATA_DIGEST, draft.stamp().dataDigest())
                .set(PlanTable.BODY, draft.body())
                .set(PlanTable.CEILINGS, draft.ceilings())
                .set(PlanTable.HOME, draft.home())
                .set(PlanTable.STATE, plan.state())
                .set(PlanTable.MADE_AT, plan.madeAt())
                .set(PlanTable.MADE_BY, plan.madeBy())
                .set(PlanTable.STATE_AT, plan.stateAt())
                .set(PlanTable.STATE_BY, plan.stateBy())
                .execute();
    }

    @Override
    public Optional<PlanVersion> find(int number) {
        return writer.read(query -> find(query, number));
    }

    private Optional<PlanVersion> find(DSLContext query, int number) {
        return select(query, PlanTable.PLAN_NUMBER.eq(number)).fetchOptional(PlanStore::plan);
    }

    @Override
    public Optional<PlanVersion> newest() {
        return writer.read(query -> select(query, DSL.trueCondition())
                .orderBy(PlanTable.PLAN_NUMBER.desc())
                .limit(1)
                .fetchOptional(PlanStore::plan));
    }

    @Override
    public Optional<PlanVersion> released() {
        return writer.read(query -> released(query).fetchOptional(PlanStore::plan));
    }

    private SelectConditionStep<Record> released(DSLContext query) {
        return select(query, PlanTable.STATE.eq(PlanState.RELEASED));
    }

    @Override
    public List<PlanVersion> list() {
        return writer.read(query -> select(query, DSL.trueCondition())
                .orderBy(PlanTable.PLAN_NUMBER.desc())
                .fetch(PlanStore::plan));
    }

    @Override
    public Saving<PlanVersion> move(int number, PlanState from, PlanState to) {
        if (!from.next().contains(to)) {
            throw new IllegalArgumentException("a plan cannot go from %s to %s".formatted(from, to));
        }
        return writer.write(tx -> {
            PlanVersion before =
                    find(tx, number).orElseThrow(() -> new NotThere("plan", writer.episodeId() + "/" + number));
            if (before.state() != from) {
                return new Saving.Stale<>(before);
            }
            if (to == PlanState.RELEASED) {
                released(tx).fetchOptional(PlanStore::plan).ifPresent(other -> setState(tx, other, PlanState.REPLACED));
            }
            return new Saving.Saved<>(setState(tx, before, to));
        });
    }

    private PlanVersion setState(DSLContext tx, PlanVersion before, PlanState to) {
        tx.update(PlanTable.PLAN)
                .set(PlanTable.STATE, to)
                .set(PlanTable.STATE_AT, writer.now())
                .set(PlanTable.STATE_BY, writer.user())
                .where(PlanTable.EPISODE_ID.eq(writer.episodeId()), PlanTable.PLAN_NUMBER.eq(before.number()))
                .execute();
        if (to == PlanState.RELEASED) {
            tx.update(PlanTable.PLAN)
                    .set(PlanTable.RELEASED_AT, writer.now())
                    .where(PlanTable.EPISODE_ID.eq(writer.episodeId()), PlanTable.PLAN_NUMBER.eq(before.number()))
                    .execute();
        }
        Note note = Note.changed("plan/state", writer.episodeId(), before.number(), before.state(), to);
        writer.note(tx, to == PlanState.RELEASED ? note.as(Action.RELEASE) : note);
        return find(tx, before.number()).orElseThrow();
    }
}
