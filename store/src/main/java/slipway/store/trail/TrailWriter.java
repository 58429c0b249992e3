package slipway.store.trail;

import java.time.Duration;
import java.util.Optional;
import java.util.function.Function;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record2;
import org.jooq.SQLDialect;
import slipway.care.record.Act;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;
import slipway.care.record.trail.TrailForm;
import slipway.care.record.trail.TrailPayload;
import slipway.store.db.Db;
import slipway.store.tables.TrailEntryTable;
import slipway.store.tables.TrailHeadTable;
import slipway.store.tables.TrailPayloadTable;
import slipway.store.tables.TrailReadingTable;

/**
 * Writes records and their entries in the trail in one transaction. The head of a chain is locked first, so that what is
 * written of one person happens one after the other on any number of nodes, and what is written of two does not wait.
 */
public final class TrailWriter {
    /** A user who goes on reading a person's record leaves one entry in this time. */
    static final Duration READING = Duration.ofHours(1);

    private final Db db;

    public TrailWriter(Db db) {
        this.db = db;
    }

    /** Runs a transaction that begins by locking a chain. */
    public <T> T write(Chain chain, Function<DSLContext, T> transaction) {
        return db.write(tx -> {
            lock(tx, chain);
            return transaction.apply(tx);
        });
    }

    /** Locks a chain until the end of the transaction. */
    public void lock(DSLContext tx, Chain chain) {
        if (tx.family() == SQLDialect.SQLITE) {
            // Its one writer holds the whole file already.
            return;
        }
        tx.insertInto(TrailHeadTable.TRAIL_HEAD)
                .set(TrailHeadTable.CHAIN_KIND, chain.kind())
                .set(TrailHeadTable.CHAIN_ID, chain.id())
                .set(TrailHeadTable.SEQ, 0L)
                .set(TrailHeadTable.DIGEST, TrailForm.START)
                .onConflictDoNothing()
                .execute();
        tx.select(TrailHeadTable.SEQ)
                .from(TrailHeadTable.TRAIL_HEAD)
                .where(isOf(chain))
                .forUpdate()
                .fetch();
    }

    private static Condition isOf(Chain chain) {
        return TrailHeadTable.CHAIN_KIND.eq(chain.kind()).and(TrailHeadTable.CHAIN_ID.eq(chain.id()));
    }

    /** Adds an entry to a chain that this transaction has locked. */
    public void append(DSLContext tx, Chain chain, Act act, Note note) {
        Optional<Record2<Long, String>> head = tx.select(TrailHeadTable.SEQ, TrailHeadTable.DIGEST)
                .from(TrailHeadTable.TRAIL_HEAD)
                .where(isOf(chain))
                .fetchOptional();
        TrailEntry entry = entry(
                chain,
                act,
                note,
                head.map(Record2::value1).orElse(0L) + 1,
                head.map(Record2::value2).orElse(TrailForm.START));
        String digest = TrailForm.digest(entry);
        insert(tx, entry, digest);
        insertPayload(tx, entry, note.payload());
        if (head.isPresent()) {
            tx.update(TrailHeadTable.TRAIL_HEAD)
                    .set(TrailHeadTable.SEQ, entry.seq())
                    .set(TrailHeadTable.DIGEST, digest)
                    .where(isOf(chain))
                    .execute();
        } else {
            tx.insertInto(TrailHeadTable.TRAIL_HEAD)
                    .set(TrailHeadTable.CHAIN_KIND, chain.kind())
                    .set(TrailHeadTable.CHAIN_ID, chain.id())
                    .set(TrailHeadTable.SEQ, entry.seq())
                    .set(TrailHeadTable.DIGEST, digest)
                    .execute();
        }
    }

    private static TrailEntry entry(Chain chain, Act act, Note note, long seq, String previousDigest) {
        return new TrailEntry(
                chain,
                seq,
                act.at(),
                act.who(),
                act.role().name(),
                note.action(),
                note.entity(),
                note.entityId(),
                note.version(),
                TrailForm.sha256(note.payload().form()),
                previousDigest,
                "");
    }

    private static void insert(DSLContext tx, TrailEntry entry, String digest) {
        tx.insertInto(TrailEntryTable.TRAIL_ENTRY)
                .set(TrailEntryTable.CHAIN_KIND, entry.chain().kind())
                .set(TrailEntryTable.CHAIN_ID, entry.chain().id())
                .set(TrailEntryTable.SEQ, entry.seq())
                .set(TrailEntryTable.AT, entry.at())
                .set(TrailEntryTable.WHO, entry.who())
                .set(TrailEntryTable.ACTING_ROLE, entry.role())
                .set(TrailEntryTable.ACTION, entry.action())
                .set(TrailEntryTable.ENTITY, entry.entity())
                .set(TrailEntryTable.ENTITY_ID, entry.entityId())
                .set(TrailEntryTable.VERSION, entry.version())
                .set(TrailEntryTable.PAYLOAD_DIGEST, entry.payloadDigest())
                .set(TrailEntryTable.PREVIOUS_DIGEST, entry.previousDigest())
                .set(TrailEntryTable.DIGEST, digest)
                .execute();
    }

    private static void insertPayload(DSLContext tx, TrailEntry entry, TrailPayload payload) {
        if (payload.form().isEmpty()) {
            return;
        }
        tx.insertInto(TrailPayloadTable.TRAIL_PAYLOAD)
                .set(TrailPayloadTable.CHAIN_KIND, entry.chain().kind())
                .set(TrailPayloadTable.CHAIN_ID, entry.chain().id())
                .set(TrailPayloadTable.SEQ, entry.seq())
                .set(TrailPayloadTable.BEFORE_TEXT, payload.before())
                .set(TrailPayloadTable.AFTER_TEXT, payload.after())
                .execute();
    }

    /** Notes that a user reads a person's record, unless that was noted within the last hour. */
    public void noteReading(String personId, String entity, String entityId, Act act) {
        if (db.read(query -> notedLately(query, personId, act))) {
            return;
        }
        Chain chain = Chain.ofPerson(personId);
        write(chain, tx -> {
            if (!notedLately(tx, personId, act)) {
                tx.insertInto(TrailReadingTable.TRAIL_READING)
                        .set(TrailReadingTable.PERSON_ID, personId)
                        .set(TrailReadingTable.USER_ID, act.who())
                        .set(TrailReadingTable.NOTED_AT, act.at())
                        .onConflict(TrailReadingTable.PERSON_ID, TrailReadingTable.USER_ID)
                        .doUpdate()
                        .set(TrailReadingTable.NOTED_AT, act.at())
                        .execute();
                append(tx, chain, act, Note.plain(Action.READ, entity, entityId));
            }
            return Optional.empty();
        });
    }

    private static boolean notedLately(DSLContext query, String personId, Act act) {
        return query.fetchExists(query.selectOne()
                .from(TrailReadingTable.TRAIL_READING)
                .where(
                        TrailReadingTable.PERSON_ID.eq(personId),
                        TrailReadingTable.USER_ID.eq(act.who()),
                        TrailReadingTable.NOTED_AT.gt(act.at().minus(READING))));
    }
}
