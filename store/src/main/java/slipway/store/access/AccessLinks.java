package slipway.store.access;

import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectWhereStep;
import org.jspecify.annotations.Nullable;
import slipway.care.record.access.AccessLink;
import slipway.store.tables.AccessLinkTable;

/** Rows of access links. */
final class AccessLinks {
    private AccessLinks() {}

    static Optional<AccessLink> find(DSLContext query, Condition which) {
        return select(query).where(which).fetchOptional(AccessLinks::link);
    }

    static SelectWhereStep<Record> select(DSLContext query) {
        return query.select(java.util.List.of(
                        AccessLinkTable.ID,
                        AccessLinkTable.EPISODE_ID,
                        AccessLinkTable.PURPOSE,
                        AccessLinkTable.PLAN_NUMBER,
                        AccessLinkTable.TOKEN_SHA256,
                        AccessLinkTable.CREATED_AT,
                        AccessLinkTable.EXPIRES_AT,
                        AccessLinkTable.REVOKED_AT,
                        AccessLinkTable.BIRTH_YEAR_ASKED,
                        AccessLinkTable.FAILURES,
                        AccessLinkTable.LOCKED_UNTIL))
                .from(AccessLinkTable.ACCESS_LINK);
    }

    static AccessLink link(Record row) {
        return new AccessLink(
                row.get(AccessLinkTable.ID),
                row.get(AccessLinkTable.EPISODE_ID),
                row.get(AccessLinkTable.PURPOSE),
                number(row.get(AccessLinkTable.PLAN_NUMBER)),
                row.get(AccessLinkTable.TOKEN_SHA256),
                row.get(AccessLinkTable.CREATED_AT),
                row.get(AccessLinkTable.EXPIRES_AT),
                Optional.ofNullable(row.get(AccessLinkTable.REVOKED_AT)),
                row.get(AccessLinkTable.BIRTH_YEAR_ASKED),
                row.get(AccessLinkTable.FAILURES),
                Optional.ofNullable(row.get(AccessLinkTable.LOCKED_UNTIL)));
    }

    private static OptionalInt number(@Nullable Integer value) {
        return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }
}
