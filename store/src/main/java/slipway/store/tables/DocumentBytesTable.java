package slipway.store.tables;

import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code document_bytes}. */
public final class DocumentBytesTable {
    public static final Table<Record> DOCUMENT_BYTES = Columns.table("document_bytes");
    public static final Field<String> DOCUMENT_ID = Columns.text("document_bytes", "document_id");
    public static final Field<byte[]> CONTENT = Columns.bytes("document_bytes", "content");

    private DocumentBytesTable() {}
}
