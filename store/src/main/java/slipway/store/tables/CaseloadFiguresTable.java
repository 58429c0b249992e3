package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import tools.jackson.databind.node.ObjectNode;

/** Table {@code caseload_figures}. */
public final class CaseloadFiguresTable {
    public static final Table<Record> CASELOAD_FIGURES = Columns.table("caseload_figures");
    public static final Field<String> CLINIC_ID = Columns.text("caseload_figures", "clinic_id");
    public static final Field<Instant> AT = Columns.instant("caseload_figures", "at_us");
    public static final Field<ObjectNode> BODY = Columns.json("caseload_figures", "body");

    private CaseloadFiguresTable() {}
}
