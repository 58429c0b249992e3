package slipway.store.tables;

import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code team_member}. */
public final class TeamMemberTable {
    public static final Table<Record> TEAM_MEMBER = Columns.table("team_member");
    public static final Field<String> TEAM_ID = Columns.text("team_member", "team_id");
    public static final Field<String> STAFF_ID = Columns.text("team_member", "staff_id");

    private TeamMemberTable() {}
}
