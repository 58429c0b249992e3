package slipway.store.chart;

import java.util.List;
import org.jooq.Condition;
import org.jooq.Records;
import org.jooq.impl.DSL;
import slipway.care.record.chart.Decision;
import slipway.care.record.chart.Decisions;
import slipway.care.record.chart.Verdict;
import slipway.store.tables.DecisionTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;

/** Decisions in the database. */
final class DecisionStore implements Decisions {
    private final EpisodeWriter writer;

    DecisionStore(EpisodeWriter writer) {
        this.writer = writer;
    }

    @Override
    public Decision add(String about, Verdict verdict, String proposed, String chosen, String reason) {
        var decision = new Decision(
                writer.newId(),
                writer.episodeId(),
                about,
                verdict,
                proposed,
                chosen,
                reason,
                writer.user(),
                writer.now());
        return writer.write(tx -> {
            tx.insertInto(DecisionTable.DECISION)
                    .set(DecisionTable.ID, decision.id())
                    .set(DecisionTable.EPISODE_ID, decision.episodeId())
                    .set(DecisionTable.ABOUT, about)
                    .set(DecisionTable.VERDICT, verdict)
                    .set(DecisionTable.PROPOSED, proposed)
                    .set(DecisionTable.CHOSEN, chosen)
                    .set(DecisionTable.REASON, reason)
                    .set(DecisionTable.MADE_BY, decision.by())
                    .set(DecisionTable.AT, decision.at())
                    .execute();
            writer.note(tx, Note.created("decision", decision.id(), 0, decision));
            return decision;
        });
    }

    @Override
    public List<Decision> list() {
        return list(DSL.trueCondition());
    }

    @Override
    public List<Decision> about(String subject) {
        return list(DecisionTable.ABOUT.eq(subject).or(DecisionTable.ABOUT.startsWith(subject + "/")));
    }

    private List<Decision> list(Condition which) {
        return writer.read(query -> query.select(
                        DecisionTable.ID,
                        DecisionTable.EPISODE_ID,
                        DecisionTable.ABOUT,
                        DecisionTable.VERDICT,
                        DecisionTable.PROPOSED,
                        DecisionTable.CHOSEN,
                        DecisionTable.REASON,
                        DecisionTable.MADE_BY,
                        DecisionTable.AT)
                .from(DecisionTable.DECISION)
                .where(DecisionTable.EPISODE_ID.eq(writer.episodeId()), which)
                .orderBy(DecisionTable.AT, DecisionTable.ID)
                .fetch(Records.mapping(Decision::new)));
    }
}
