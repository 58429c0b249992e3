package slipway.store.chart;

import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import slipway.care.record.chart.ComputedResult;
import slipway.care.record.chart.ResultInputs;
import slipway.care.record.chart.ResultKind;
import slipway.care.record.chart.Results;
import slipway.care.record.chart.Stamp;
import slipway.store.tables.ComputedResultTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;
import tools.jackson.databind.node.ObjectNode;

/** Computed results in the database. */
final class ResultStore implements Results {
    private final EpisodeWriter writer;

    ResultStore(EpisodeWriter writer) {
        this.writer = writer;
    }

    private SelectConditionStep<Record> select(DSLContext query, Condition which) {
        return query.select(List.of(
                        ComputedResultTable.ID,
                        ComputedResultTable.EPISODE_ID,
                        ComputedResultTable.KIND,
                        ComputedResultTable.INPUT_VERSIONS,
                        ComputedResultTable.INPUT_DIGEST,
                        ComputedResultTable.PROGRAM_VERSION,
                        ComputedResultTable.DATA_DIGEST,
                        ComputedResultTable.BODY,
                        ComputedResultTable.AT,
                        ComputedResultTable.MADE_BY))
                .from(ComputedResultTable.COMPUTED_RESULT)
                .where(ComputedResultTable.EPISODE_ID.eq(writer.episodeId()), which);
    }

    private static ComputedResult result(Record row) {
        return new ComputedResult(
                row.get(ComputedResultTable.ID),
                row.get(ComputedResultTable.EPISODE_ID),
                row.get(ComputedResultTable.KIND),
                InputVersions.inputs(
                        row.get(ComputedResultTable.INPUT_VERSIONS), row.get(ComputedResultTable.INPUT_DIGEST)),
                new Stamp(row.get(ComputedResultTable.PROGRAM_VERSION), row.get(ComputedResultTable.DATA_DIGEST)),
                row.get(ComputedResultTable.BODY),
                row.get(ComputedResultTable.AT),
                row.get(ComputedResultTable.MADE_BY));
    }

    @Override
    public ComputedResult add(ResultKind kind, ResultInputs inputs, Stamp stamp, ObjectNode body) {
        return writer.write(tx -> {
            Optional<ComputedResult> kept =
                    select(tx, same(kind, inputs, stamp)).fetchOptional(ResultStore::result);
            if (kept.isPresent()) {
                return kept.get();
            }
            var result = new ComputedResult(
                    writer.newId(), writer.episodeId(), kind, inputs, stamp, body, writer.now(), writer.user());
            insert(tx, result);
            writer.note(tx, Note.created("result/" + kind, result.id(), 0, result));
            return result;
        });
    }

    private static Condition same(ResultKind kind, ResultInputs inputs, Stamp stamp) {
        return ComputedResultTable.KIND
                .eq(kind)
                .and(ComputedResultTable.INPUT_DIGEST.eq(inputs.digest()))
                .and(ComputedResultTable.PROGRAM_VERSION.eq(stamp.programVersion()))
                .and(ComputedResultTable.DATA_DIGEST.eq(stamp.dataDigest()));
    }

    private static void insert(DSLContext tx, ComputedResult result) {
        tx.insertInto(ComputedResultTable.COMPUTED_RESULT)
                .set(ComputedResultTable.ID, result.id())
                .set(ComputedResultTable.EPISODE_ID, result.episodeId())
                .set(ComputedResultTable.KIND, result.kind())
                .set(ComputedResultTable.INPUT_VERSIONS, InputVersions.json(result.inputs()))
                .set(ComputedResultTable.INPUT_DIGEST, result.inputs().digest())
                .set(ComputedResultTable.PROGRAM_VERSION, result.stamp().programVersion())
                .set(ComputedResultTable.DATA_DIGEST, result.stamp().dataDigest())
                .set(ComputedResultTable.BODY, result.body())
                .set(ComputedResultTable.AT, result.at())
                .set(ComputedResultTable.MADE_BY, result.by())
                .execute();
    }

    @Override
    public Optional<ComputedResult> newest(ResultKind kind) {
        return writer.read(query -> select(query, ComputedResultTable.KIND.eq(kind))
                .orderBy(ComputedResultTable.AT.desc(), ComputedResultTable.ID.desc())
                .limit(1)
                .fetchOptional(ResultStore::result));
    }

    @Override
    public List<ComputedResult> list(ResultKind kind) {
        return writer.read(query -> select(query, ComputedResultTable.KIND.eq(kind))
                .orderBy(ComputedResultTable.AT.desc(), ComputedResultTable.ID.desc())
                .fetch(ResultStore::result));
    }
}
