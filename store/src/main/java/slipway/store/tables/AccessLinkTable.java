package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import slipway.care.record.access.LinkPurpose;

/** Table {@code access_link}. */
public final class AccessLinkTable {
    public static final Table<Record> ACCESS_LINK = Columns.table("access_link");
    public static final Field<String> ID = Columns.text("access_link", "id");
    public static final Field<String> EPISODE_ID = Columns.text("access_link", "episode_id");
    public static final Field<LinkPurpose> PURPOSE = Columns.word("access_link", "purpose", LinkPurpose.class);
    public static final Field<Integer> PLAN_NUMBER = Columns.whole("access_link", "plan_number");
    public static final Field<String> TOKEN_SHA256 = Columns.text("access_link", "token_sha256");
    public static final Field<Instant> CREATED_AT = Columns.instant("access_link", "created_at_us");
    public static final Field<Instant> EXPIRES_AT = Columns.instant("access_link", "expires_at_us");
    public static final Field<Instant> REVOKED_AT = Columns.instant("access_link", "revoked_at_us");
    public static final Field<Boolean> BIRTH_YEAR_ASKED = Columns.yesNo("access_link", "birth_year_asked");
    public static final Field<Integer> FAILURES = Columns.whole("access_link", "failures");
    public static final Field<Instant> LOCKED_UNTIL = Columns.instant("access_link", "locked_until_us");

    private AccessLinkTable() {}
}
