package slipway.store.trail;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectOnConditionStep;
import slipway.care.record.Act;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.Trail;
import slipway.care.record.trail.TrailBreak;
import slipway.care.record.trail.TrailCheck;
import slipway.care.record.trail.TrailEntry;
import slipway.care.record.trail.TrailForm;
import slipway.care.record.trail.TrailHead;
import slipway.care.record.trail.TrailPayload;
import slipway.care.record.trail.TrailReport;
import slipway.store.db.Db;
import slipway.store.tables.TrailEntryTable;
import slipway.store.tables.TrailHeadTable;
import slipway.store.tables.TrailPayloadTable;

/** The trail in the database. */
public final class TrailStore implements Trail {
    private static final int FETCH = 1_000;

    private final Db db;
    private final TrailWriter writer;

    public TrailStore(Db db, TrailWriter writer) {
        this.db = db;
        this.writer = writer;
    }

    @Override
    public List<TrailEntry> list(Chain chain, long beforeSeq, int limit) {
        return db.read(query -> query.select(entryFields())
                .from(TrailEntryTable.TRAIL_ENTRY)
                .where(
                        TrailEntryTable.CHAIN_KIND.eq(chain.kind()),
                        TrailEntryTable.CHAIN_ID.eq(chain.id()),
                        TrailEntryTable.SEQ.lt(beforeSeq > 0 ? beforeSeq : Long.MAX_VALUE))
                .orderBy(TrailEntryTable.SEQ.desc())
                .limit(limit)
                .fetch(TrailStore::entry));
    }

    @Override
    public Optional<TrailPayload> payload(Chain chain, long seq) {
        return db.read(query -> query.select(TrailPayloadTable.BEFORE_TEXT, TrailPayloadTable.AFTER_TEXT)
                .from(TrailPayloadTable.TRAIL_PAYLOAD)
                .where(
                        TrailPayloadTable.CHAIN_KIND.eq(chain.kind()),
                        TrailPayloadTable.CHAIN_ID.eq(chain.id()),
                        TrailPayloadTable.SEQ.eq(seq))
                .fetchOptional(row -> new TrailPayload(row.value1(), row.value2())));
    }

    @Override
    public void note(Chain chain, Action action, String entity, String entityId, Act act) {
        writer.write(chain, tx -> {
            writer.append(tx, chain, act, Note.plain(action, entity, entityId));
            return Optional.empty();
        });
    }

    @Override
    public TrailReport verify() {
        // One state of the database for heads and entries, or an entry written meanwhile would look like a break.
        return db.readTogether(query -> {
            Map<Chain, TrailHead> heads = heads(query);
            String digest = headsDigest(heads);
            long chains = heads.size();
            var breaks = new ArrayList<TrailBreak>();
            long entries = walk(query, heads, breaks);
            heads.values().forEach(head -> breaks.addAll(withoutEntries(head)));
            return new TrailReport(chains, entries, digest, breaks);
        });
    }

    /** Checks every entry; heads of chains that have entries are taken out of the map. */
    private static long walk(DSLContext query, Map<Chain, TrailHead> heads, List<TrailBreak> breaks) {
        long entries = 0;
        Optional<Chain> open = Optional.empty();
        TrailCheck check = new TrailCheck(Chain.ofClinic(""));
        try (Cursor<Record> cursor = all(query).fetchSize(FETCH).fetchLazy()) {
            for (Record row : cursor) {
                TrailEntry entry = entry(row);
                if (!open.equals(Optional.of(entry.chain()))) {
                    end(open, check, heads, breaks);
                    open = Optional.of(entry.chain());
                    check = new TrailCheck(entry.chain());
                }
                check.next(entry, payload(row));
                entries++;
            }
        }
        end(open, check, heads, breaks);
        return entries;
    }

    private static void end(
            Optional<Chain> open, TrailCheck check, Map<Chain, TrailHead> heads, List<TrailBreak> breaks) {
        open.ifPresent(chain -> breaks.addAll(check.end(Optional.ofNullable(heads.remove(chain)))));
    }

    private static List<TrailBreak> withoutEntries(TrailHead head) {
        return new TrailCheck(head.chain()).end(Optional.of(head));
    }

    private static org.jooq.ResultQuery<Record> all(DSLContext query) {
        SelectOnConditionStep<Record> joined = query.select(entryFields())
                .select(TrailPayloadTable.SEQ, TrailPayloadTable.BEFORE_TEXT, TrailPayloadTable.AFTER_TEXT)
                .from(TrailEntryTable.TRAIL_ENTRY)
                .leftJoin(TrailPayloadTable.TRAIL_PAYLOAD)
                .on(
                        TrailPayloadTable.CHAIN_KIND.eq(TrailEntryTable.CHAIN_KIND),
                        TrailPayloadTable.CHAIN_ID.eq(TrailEntryTable.CHAIN_ID),
                        TrailPayloadTable.SEQ.eq(TrailEntryTable.SEQ));
        return joined.orderBy(TrailEntryTable.CHAIN_KIND, TrailEntryTable.CHAIN_ID, TrailEntryTable.SEQ);
    }

    private static List<org.jooq.Field<?>> entryFields() {
        return List.of(
                TrailEntryTable.CHAIN_KIND,
                TrailEntryTable.CHAIN_ID,
                TrailEntryTable.SEQ,
                TrailEntryTable.AT,
                TrailEntryTable.WHO,
                TrailEntryTable.ACTING_ROLE,
                TrailEntryTable.ACTION,
                TrailEntryTable.ENTITY,
                TrailEntryTable.ENTITY_ID,
                TrailEntryTable.VERSION,
                TrailEntryTable.PAYLOAD_DIGEST,
                TrailEntryTable.PREVIOUS_DIGEST,
                TrailEntryTable.DIGEST);
    }

    private static TrailEntry entry(Record row) {
        return new TrailEntry(
                new Chain(row.get(TrailEntryTable.CHAIN_KIND), row.get(TrailEntryTable.CHAIN_ID)),
                row.get(TrailEntryTable.SEQ),
                row.get(TrailEntryTable.AT),
                row.get(TrailEntryTable.WHO),
                row.get(TrailEntryTable.ACTING_ROLE),
                row.get(TrailEntryTable.ACTION),
                row.get(TrailEntryTable.ENTITY),
                row.get(TrailEntryTable.ENTITY_ID),
                row.get(TrailEntryTable.VERSION),
                row.get(TrailEntryTable.PAYLOAD_DIGEST),
                row.get(TrailEntryTable.PREVIOUS_DIGEST),
                row.get(TrailEntryTable.DIGEST));
    }

    private static Optional<TrailPayload> payload(Record row) {
        return Optional.ofNullable(row.get(TrailPayloadTable.BEFORE_TEXT))
                .map(before -> new TrailPayload(before, row.get(TrailPayloadTable.AFTER_TEXT)));
    }

    private static Map<Chain, TrailHead> heads(DSLContext query) {
        var heads = new HashMap<Chain, TrailHead>();
        query.select(TrailHeadTable.CHAIN_KIND, TrailHeadTable.CHAIN_ID, TrailHeadTable.SEQ, TrailHeadTable.DIGEST)
                .from(TrailHeadTable.TRAIL_HEAD)
                .forEach(row -> {
                    var chain = new Chain(row.value1(), row.value2());
                    heads.put(chain, new TrailHead(chain, row.value3(), row.value4()));
                });
        return heads;
    }

    private static String headsDigest(Map<Chain, TrailHead> heads) {
        return TrailForm.sha256(heads.values().stream()
                .map(head -> "%s %d %s\n".formatted(head.chain(), head.seq(), head.digest()))
                .sorted()
                .collect(Collectors.joining()));
    }
}
