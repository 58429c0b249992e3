package slipway.store.follow;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Record;
import slipway.care.record.NotThere;
import slipway.care.record.follow.MeasureEntry;
import slipway.care.record.follow.Measures;
import slipway.store.tables.MeasureEntryTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;
import tools.jackson.databind.node.ObjectNode;

/** Measures of one episode in the database. */
public final class MeasureStore implements Measures {
    private final EpisodeWriter writer;

    public MeasureStore(EpisodeWriter writer) {
        this.writer = writer;
    }

    @Override
    public MeasureEntry add(String measureId, LocalDate day, ObjectNode body) {
        return writer.write(tx -> insert(tx, measureId, day, body, Optional.empty()));
    }

    /** Within a transaction of the writer. */
    public void addIn(DSLContext tx, String measureId, LocalDate day, ObjectNode body) {
        insert(tx, measureId, day, body, Optional.empty());
    }

    /** Ids of the measures as a transaction sees them, in the order of {@link #list}. */
    public List<String> idsIn(DSLContext tx) {
        return select(tx).stream().map(MeasureEntry::id).toList();
    }

    @Override
    public MeasureEntry correct(String entryId, LocalDate day, ObjectNode body) {
        return writer.write(tx -> {
            String measureId = tx.select(MeasureEntryTable.MEASURE_ID)
                    .from(MeasureEntryTable.MEASURE_ENTRY)
                    .where(MeasureEntryTable.ID.eq(entryId), MeasureEntryTable.EPISODE_ID.eq(writer.episodeId()))
                    .fetchOptional(MeasureEntryTable.MEASURE_ID)
                    .orElseThrow(() -> new NotThere("measure", entryId));
            return insert(tx, measureId, day, body, Optional.of(entryId));
        });
    }

    private MeasureEntry insert(
            DSLContext tx, String measureId, LocalDate day, ObjectNode body, Optional<String> replaces) {
        var entry = new MeasureEntry(
                writer.newId(),
                writer.episodeId(),
                measureId,
                day,
                body,
                replaces.orElse(""),
                writer.now(),
                writer.user());
        tx.insertInto(MeasureEntryTable.MEASURE_ENTRY)
                .set(MeasureEntryTable.ID, entry.id())
                .set(MeasureEntryTable.EPISODE_ID, entry.episodeId())
                .set(MeasureEntryTable.MEASURE_ID, measureId)
                .set(MeasureEntryTable.TAKEN_ON, day)
                .set(MeasureEntryTable.BODY, body)
                .set(MeasureEntryTable.REPLACES_ID, replaces.orElse(null))
                .set(MeasureEntryTable.AT, entry.at())
                .set(MeasureEntryTable.MADE_BY, entry.by())
                .execute();
        writer.note(tx, Note.created("measure", entry.id(), 0, entry));
        return entry;
    }

    @Override
    public List<MeasureEntry> list() {
        return writer.read(MeasureStore.this::select);
    }

    private List<MeasureEntry> select(DSLContext query) {
        return query.select(List.of(
                        MeasureEntryTable.ID,
                        MeasureEntryTable.EPISODE_ID,
                        MeasureEntryTable.MEASURE_ID,
                        MeasureEntryTable.TAKEN_ON,
                        MeasureEntryTable.BODY,
                        MeasureEntryTable.REPLACES_ID,
                        MeasureEntryTable.AT,
                        MeasureEntryTable.MADE_BY))
                .from(MeasureEntryTable.MEASURE_ENTRY)
                .where(
                        MeasureEntryTable.EPISODE_ID.eq(writer.episodeId()),
                        MeasureEntryTable.ID.notIn(query.select(MeasureEntryTable.REPLACES_ID)
                                .from(MeasureEntryTable.MEASURE_ENTRY)
                                .where(
                                        MeasureEntryTable.EPISODE_ID.eq(writer.episodeId()),
                                        MeasureEntryTable.REPLACES_ID.isNotNull())))
                .orderBy(MeasureEntryTable.TAKEN_ON, MeasureEntryTable.AT, MeasureEntryTable.ID)
                .fetch(MeasureStore::entry);
    }

    private static MeasureEntry entry(Record row) {
        return new MeasureEntry(
                row.get(MeasureEntryTable.ID),
                row.get(MeasureEntryTable.EPISODE_ID),
                row.get(MeasureEntryTable.MEASURE_ID),
                row.get(MeasureEntryTable.TAKEN_ON),
                row.get(MeasureEntryTable.BODY),
                Optional.ofNullable(row.get(MeasureEntryTable.REPLACES_ID)).orElse(""),
                row.get(MeasureEntryTable.AT),
                row.get(MeasureEntryTable.MADE_BY));
    }
}
