package slipway.store.follow;

import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Record;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.follow.Alert;
import slipway.care.record.intake.Intake;
import slipway.care.record.intake.Intakes;
import slipway.exercises.exercise.Language;
import slipway.store.tables.IntakeTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;
import tools.jackson.databind.node.ObjectNode;

/** What was told before the first visit of one episode, in the database. */
public final class IntakeStore implements Intakes {
    private final EpisodeWriter writer;

    public IntakeStore(EpisodeWriter writer) {
        this.writer = writer;
    }

    @Override
    public Optional<Intake> tell(boolean whole, Language language, ObjectNode answers, Optional<Danger> danger) {
        var told =
                new Intake(writer.newId(), writer.episodeId(), writer.user(), whole, language, answers, writer.now());
        return writer.writeAlsoFor(LinkPurpose.INTAKE, tx -> {
            if (isDone(tx)) {
                return Optional.empty();
            }
            insert(tx, told);
            writer.note(tx, Note.created("intake", told.id(), 0, told));
            danger.ifPresent(each -> raise(tx, told, each));
            return Optional.of(told);
        });
    }

    private boolean isDone(DSLContext query) {
        return query.fetchExists(query.selectOne()
                .from(IntakeTable.INTAKE)
                .where(IntakeTable.LINK_ID.eq(writer.user()), IntakeTable.WHOLE.isTrue()));
    }

    private static void insert(DSLContext tx, Intake told) {
        tx.insertInto(IntakeTable.INTAKE)
                .set(IntakeTable.ID, told.id())
                .set(IntakeTable.EPISODE_ID, told.episodeId())
                .set(IntakeTable.LINK_ID, told.linkId())
                .set(IntakeTable.WHOLE, told.whole())
                .set(IntakeTable.LANGUAGE, told.language().code())
                .set(IntakeTable.ANSWERS, told.answers())
                .set(IntakeTable.TOLD_AT, told.toldAt())
                .execute();
    }

    private void raise(DSLContext tx, Intake told, Danger danger) {
        var alert = new Alert(
                writer.newId(),
                writer.episodeId(),
                danger.kind(),
                danger.words(),
                // The column names what raised the alert; here it is what was told.
                Optional.of(told.id()),
                danger.ownerId(),
                writer.now(),
                0,
                writer.now(),
                Optional.empty());
        AlertRows.insert(tx, alert, writer.clinicId());
        writer.note(tx, Note.created("alert", alert.id(), 0, alert));
    }

    @Override
    public List<Intake> list() {
        return writer.read(query -> query.select(
                        IntakeTable.ID,
                        IntakeTable.EPISODE_ID,
                        IntakeTable.LINK_ID,
                        IntakeTable.WHOLE,
                        IntakeTable.LANGUAGE,
                        IntakeTable.ANSWERS,
                        IntakeTable.TOLD_AT)
                .from(IntakeTable.INTAKE)
                .where(IntakeTable.EPISODE_ID.eq(writer.episodeId()))
                .orderBy(IntakeTable.TOLD_AT, IntakeTable.ID)
                .fetch(IntakeStore::intake));
    }

    private static Intake intake(Record row) {
        return new Intake(
                row.get(IntakeTable.ID),
                row.get(IntakeTable.EPISODE_ID),
                row.get(IntakeTable.LINK_ID),
                row.get(IntakeTable.WHOLE),
                Language.find(row.get(IntakeTable.LANGUAGE)).orElseThrow(),
                row.get(IntakeTable.ANSWERS),
                row.get(IntakeTable.TOLD_AT));
    }
}
