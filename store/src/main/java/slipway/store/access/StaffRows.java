package slipway.store.access;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import slipway.care.record.Role;
import slipway.care.record.access.Credentials;
import slipway.care.record.access.StaffAccount;
import slipway.store.tables.StaffTable;

/** Rows of accounts. */
final class StaffRows {
    static final List<Field<?>> FIELDS = List.of(
            StaffTable.ID,
            StaffTable.LOGIN,
            StaffTable.DISPLAY_NAME,
            StaffTable.CLINIC_ID,
            StaffTable.ROLES,
            StaffTable.REACH,
            StaffTable.ACTIVE,
            StaffTable.VERSION);

    private StaffRows() {}

    static Optional<StaffAccount> find(DSLContext query, String staffId) {
        return query.select(FIELDS)
                .from(StaffTable.STAFF)
                .where(StaffTable.ID.eq(staffId))
                .fetchOptional(StaffRows::account);
    }

    static StaffAccount account(Record row) {
        return new StaffAccount(
                row.get(StaffTable.ID),
                row.get(StaffTable.LOGIN),
                row.get(StaffTable.DISPLAY_NAME),
                row.get(StaffTable.CLINIC_ID),
                roles(row.get(StaffTable.ROLES)),
                row.get(StaffTable.REACH),
                row.get(StaffTable.ACTIVE),
                row.get(StaffTable.VERSION));
    }

    static Credentials credentials(Record row) {
        return new Credentials(
                account(row),
                row.get(StaffTable.PASSWORD_HASH),
                Optional.ofNullable(row.get(StaffTable.TOTP_SECRET)),
                row.get(StaffTable.FAILURES),
                Optional.ofNullable(row.get(StaffTable.NEXT_ALLOWED_AT)));
    }

    static String text(Set<Role> roles) {
        return roles.stream().map(Role::name).sorted().collect(Collectors.joining(","));
    }

    private static Set<Role> roles(String text) {
        var roles = EnumSet.noneOf(Role.class);
        Arrays.stream(text.split(",")).map(Role::valueOf).forEach(roles::add);
        return roles;
    }
}
