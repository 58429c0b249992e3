package slipway.store.papers;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import org.jooq.impl.DSL;
import slipway.care.record.papers.Documents;
import slipway.care.record.papers.StoredDocument;
import slipway.care.record.trail.TrailForm;
import slipway.store.tables.DocumentBytesTable;
import slipway.store.tables.DocumentTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;

/** Documents in the database. */
public final class DocumentStore implements Documents {
    private final EpisodeWriter writer;

    public DocumentStore(EpisodeWriter writer) {
        this.writer = writer;
    }

    @Override
    public StoredDocument add(String kind, String mediaType, byte[] bytes, OptionalInt planVersion) {
        if (bytes.length == 0 || bytes.length > MAX_BYTES) {
            throw new IllegalArgumentException(
                    "a document must have 1 to %d bytes, had %d".formatted(MAX_BYTES, bytes.length));
        }
        var document = new StoredDocument(
                writer.newId(),
                writer.episodeId(),
                kind,
                mediaType,
                bytes.length,
                TrailForm.sha256(bytes),
                planVersion,
                writer.now(),
                writer.user());
        return writer.write(tx -> {
            insert(tx, document, bytes);
            writer.note(tx, Note.created("document", document.id(), 0, document));
            return document;
        });
    }

    private static void insert(DSLContext tx, StoredDocument document, byte[] bytes) {
        OptionalInt plan = document.planVersion();
        tx.insertInto(DocumentTable.DOCUMENT)
                .set(DocumentTable.ID, document.id())
                .set(DocumentTable.EPISODE_ID, document.episodeId())
                .set(DocumentTable.KIND, document.kind())
                .set(DocumentTable.MEDIA_TYPE, document.mediaType())
                .set(DocumentTable.SIZE_BYTES, document.size())
                .set(DocumentTable.SHA256, document.sha256())
                .set(DocumentTable.PLAN_NUMBER, plan.isPresent() ? (Integer) plan.getAsInt() : null)
                .set(DocumentTable.AT, document.at())
                .set(DocumentTable.MADE_BY, document.by())
                .execute();
        tx.insertInto(DocumentBytesTable.DOCUMENT_BYTES)
                .set(DocumentBytesTable.DOCUMENT_ID, document.id())
                .set(DocumentBytesTable.CONTENT, bytes)
                .execute();
    }

    private SelectConditionStep<Record> select(DSLContext query, Condition which) {
        return query.select(List.of(
                        DocumentTable.ID,
                        DocumentTable.EPISODE_ID,
                        DocumentTable.KIND,
                        DocumentTable.MEDIA_TYPE,
                        DocumentTable.SIZE_BYTES,
                        DocumentTable.SHA256,
                        DocumentTable.PLAN_NUMBER,
                        DocumentTable.AT,
                        DocumentTable.MADE_BY))
                .from(DocumentTable.DOCUMENT)
                .where(DocumentTable.EPISODE_ID.eq(writer.episodeId()), which);
    }

    private static StoredDocument document(Record row) {
        Integer plan = row.get(DocumentTable.PLAN_NUMBER);
        return new StoredDocument(
                row.get(DocumentTable.ID),
                row.get(DocumentTable.EPISODE_ID),
                row.get(DocumentTable.KIND),
                row.get(DocumentTable.MEDIA_TYPE),
                row.get(DocumentTable.SIZE_BYTES),
                row.get(DocumentTable.SHA256),
                plan == null ? OptionalInt.empty() : OptionalInt.of(plan),
                row.get(DocumentTable.AT),
                row.get(DocumentTable.MADE_BY));
    }

    @Override
    public List<StoredDocument> list() {
        return writer.read(query -> select(query, DSL.trueCondition())
                .orderBy(DocumentTable.AT.desc(), DocumentTable.ID.desc())
                .fetch(DocumentStore::document));
    }

    @Override
    public Optional<StoredDocument> find(String documentId) {
        return writer.read(
                query -> select(query, DocumentTable.ID.eq(documentId)).fetchOptional(DocumentStore::document));
    }

    @Override
    public Optional<byte[]> bytes(String documentId) {
        return writer.read(query -> query.select(DocumentBytesTable.CONTENT)
                .from(DocumentBytesTable.DOCUMENT_BYTES)
                .join(DocumentTable.DOCUMENT)
                .on(DocumentTable.ID.eq(DocumentBytesTable.DOCUMENT_ID))
                .where(DocumentTable.ID.eq(documentId), DocumentTable.EPISODE_ID.eq(writer.episodeId()))
                .fetchOptional(DocumentBytesTable.CONTENT));
    }
}
