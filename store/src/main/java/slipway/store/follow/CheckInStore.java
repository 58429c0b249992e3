package slipway.store.follow;

import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Records;
import org.jooq.SelectConditionStep;
import org.jooq.impl.DSL;
import slipway.care.record.SameJson;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.follow.Alert;
import slipway.care.record.follow.CheckIn;
import slipway.care.record.follow.CheckIns;
import slipway.care.record.follow.Receipt;
import slipway.store.tables.AlertTable;
import slipway.store.tables.CheckInTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;
import tools.jackson.databind.node.ObjectNode;

/** Check-ins of one episode in the database. */
public final class CheckInStore implements CheckIns {
    private final EpisodeWriter writer;

    public CheckInStore(EpisodeWriter writer) {
        this.writer = writer;
    }

    @Override
    public Receipt add(String id, String sessionId, String exerciseId, ObjectNode body) {
        var sent = new CheckIn(id, writer.episodeId(), sessionId, exerciseId, body, writer.now());
        return writer.writeAlsoFor(LinkPurpose.GUIDE, tx -> {
            Optional<CheckIn> kept = select(tx, CheckInTable.ID.eq(id)).fetchOptional(Records.mapping(CheckIn::new));
            if (kept.isPresent()) {
                return sameContent(kept.get(), sent) ? new Receipt.Again(kept.get()) : new Receipt.IdInUse(id);
            }
            tx.insertInto(CheckInTable.CHECK_IN)
                    .set(CheckInTable.ID, id)
                    .set(CheckInTable.EPISODE_ID, writer.episodeId())
                    .set(CheckInTable.SESSION_ID, sessionId)
                    .set(CheckInTable.EXERCISE_ID, exerciseId)
                    .set(CheckInTable.BODY, body)
                    .set(CheckInTable.RECEIVED_AT, writer.now())
                    .execute();
            writer.note(tx, Note.created("check-in", id, 0, sent));
            return new Receipt.Taken(sent);
        });
    }

    /** Whether both say the same, whatever the order of their keys. */
    private static boolean sameContent(CheckIn kept, CheckIn sent) {
        return kept.sessionId().equals(sent.sessionId())
                && kept.exerciseId().equals(sent.exerciseId())
                && SameJson.same(kept.body(), sent.body());
    }

    private SelectConditionStep<org.jooq.Record6<String, String, String, String, ObjectNode, java.time.Instant>> select(
            DSLContext query, Condition which) {
        return query.select(
                        CheckInTable.ID,
                        CheckInTable.EPISODE_ID,
                        CheckInTable.SESSION_ID,
                        CheckInTable.EXERCISE_ID,
                        CheckInTable.BODY,
                        CheckInTable.RECEIVED_AT)
                .from(CheckInTable.CHECK_IN)
                .where(CheckInTable.EPISODE_ID.eq(writer.episodeId()), which);
    }

    @Override
    public List<CheckIn> list() {
        return writer.read(query -> select(query, DSL.trueCondition())
                .orderBy(CheckInTable.RECEIVED_AT, CheckInTable.ID)
                .fetch(Records.mapping(CheckIn::new)));
    }

    @Override
    public Optional<CheckIn> newest() {
        return writer.read(query -> select(query, DSL.trueCondition())
                .orderBy(CheckInTable.RECEIVED_AT.desc(), CheckInTable.ID.desc())
                .limit(1)
                .fetchOptional(Records.mapping(CheckIn::new)));
    }

    @Override
    public Alert raise(String kind, String words, Optional<String> checkInId, String ownerId) {
        var alert = new Alert(
                writer.newId(),
                writer.episodeId(),
                kind,
                words,
                checkInId,
                ownerId,
                writer.now(),
                0,
                writer.now(),
                Optional.empty());
        return writer.writeAlsoFor(LinkPurpose.GUIDE, tx -> {
            Optional<Alert> raised = checkInId.flatMap(id -> AlertRows.select(tx)
                    .where(
                            AlertTable.EPISODE_ID.eq(writer.episodeId()),
                            AlertTable.KIND.eq(kind),
                            AlertTable.CHECK_IN_ID.eq(id))
                    .fetchOptional(AlertRows::alert));
            if (raised.isPresent()) {
                return raised.get();
            }
            AlertRows.insert(tx, alert, writer.clinicId());
            writer.note(tx, Note.created("alert", alert.id(), 0, alert));
            return alert;
        });
    }

    @Override
    public List<Alert> alerts() {
        return writer.read(query -> AlertRows.select(query)
                .where(AlertTable.EPISODE_ID.eq(writer.episodeId()))
                .orderBy(AlertTable.RAISED_AT.desc(), AlertTable.ID.desc())
                .fetch(AlertRows::alert));
    }
}
