package slipway.store.trail;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jooq.DSLContext;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.db.Ids;
import slipway.store.tables.TrailEntryTable;
import slipway.store.tables.TrailPayloadTable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Reads and writes one episode in the name of one act.
 *
 * @param link what a patient came in for; empty for everybody else
 */
public record EpisodeWriter(
        Db db,
        TrailWriter trail,
        Ids ids,
        Act act,
        String episodeId,
        String personId,
        String clinicId,
        Optional<LinkPurpose> link) {

    public <T> T read(Function<DSLContext, T> query) {
        return db.read(query);
    }

    /** One transaction of a member of staff or of the program. */
    public <T> T write(Function<DSLContext, T> transaction) {
        if (act.role() == Role.PATIENT) {
            throw new IllegalStateException("a patient cannot write this");
        }
        return writeByAnybody(transaction);
    }

    /** One transaction of a member of staff, of the program, or of a patient who came in for this. */
    public <T> T writeAlsoFor(LinkPurpose purpose, Function<DSLContext, T> transaction) {
        return link.equals(Optional.of(purpose)) ? writeByAnybody(transaction) : write(transaction);
    }

    private <T> T writeByAnybody(Function<DSLContext, T> transaction) {
        return trail.write(Chain.ofPerson(personId), transaction);
    }

    /** Adds an entry to the trail of the person, within a transaction of this writer. */
    public void note(DSLContext tx, Note note) {
        trail.append(tx, Chain.ofPerson(personId), act, note);
    }

    /** What the trail says was there after each act on one record, oldest first. */
    public List<Change> payloads(String entity, String entityId) {
        return db.read(query -> query.select(
                        TrailEntryTable.VERSION, TrailEntryTable.AT, TrailEntryTable.WHO, TrailPayloadTable.AFTER_TEXT)
                .from(TrailEntryTable.TRAIL_ENTRY)
                .join(TrailPayloadTable.TRAIL_PAYLOAD)
                .on(
                        TrailPayloadTable.CHAIN_KIND.eq(TrailEntryTable.CHAIN_KIND),
                        TrailPayloadTable.CHAIN_ID.eq(TrailEntryTable.CHAIN_ID),
                        TrailPayloadTable.SEQ.eq(TrailEntryTable.SEQ))
                .where(
                        TrailEntryTable.CHAIN_KIND.eq(Chain.Kind.PERSON),
                        TrailEntryTable.CHAIN_ID.eq(personId),
                        TrailEntryTable.ENTITY.eq(entity),
                        TrailEntryTable.ENTITY_ID.eq(entityId))
                .orderBy(TrailEntryTable.SEQ)
                .fetch(row -> new Change(
                        row.value1(),
                        row.value2(),
                        row.value3(),
                        JsonMapper.shared().readTree(row.value4()))));
    }

    /**
     * One act on a record.
     *
     * @param version of the record after the act
     * @param after what was there then
     */
    public record Change(long version, Instant at, String who, JsonNode after) {}

    /** A new id. */
    public String newId() {
        return ids.next(act.at());
    }

    public Instant now() {
        return act.at();
    }

    public String user() {
        return act.userId();
    }
}
