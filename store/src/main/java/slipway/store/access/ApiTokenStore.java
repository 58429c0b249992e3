package slipway.store.access;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.access.ApiScope;
import slipway.care.record.access.ApiToken;
import slipway.care.record.access.ApiTokens;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.tables.ApiTokenTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** Tokens in the database. Their trail is that of the clinic. */
public final class ApiTokenStore implements ApiTokens {
    private static final Duration USE_NOTED = Duration.ofMinutes(1);
    private static final List<Field<?>> FIELDS = List.of(
            ApiTokenTable.ID,
            ApiTokenTable.CLINIC_ID,
            ApiTokenTable.STAFF_ID,
            ApiTokenTable.LABEL,
            ApiTokenTable.SCOPES,
            ApiTokenTable.CREATED_AT,
            ApiTokenTable.CREATED_BY,
            ApiTokenTable.EXPIRES_AT,
            ApiTokenTable.REVOKED_AT,
            ApiTokenTable.LAST_USED_AT);

    private final Db db;
    private final TrailWriter trail;
    private final OnceRows once;

    public ApiTokenStore(Db db, TrailWriter trail) {
        this.db = db;
        this.trail = trail;
        this.once = new OnceRows(db);
    }

    @Override
    public ApiToken add(ApiToken token, String sha256, Act act) {
        Chain chain = Chain.ofClinic(act.clinicId());
        return trail.write(chain, tx -> {
            boolean ours = StaffRows.find(tx, token.staffId())
                    .filter(account -> account.clinicId().equals(act.clinicId()))
                    .isPresent();
            if (!ours) {
                throw new NotThere("account", token.staffId());
            }
            tx.insertInto(ApiTokenTable.API_TOKEN)
                    .set(ApiTokenTable.ID, token.id())
                    .set(ApiTokenTable.CLINIC_ID, act.clinicId())
                    .set(ApiTokenTable.STAFF_ID, token.staffId())
                    .set(ApiTokenTable.LABEL, token.label())
                    .set(ApiTokenTable.SCOPES, text(token.scopes()))
                    .set(ApiTokenTable.TOKEN_SHA256, sha256)
                    .set(ApiTokenTable.CREATED_AT, act.at())
                    .set(ApiTokenTable.CREATED_BY, act.userId())
                    .set(ApiTokenTable.EXPIRES_AT, token.expiresAt())
                    .execute();
            ApiToken kept =
                    find(tx, ApiTokenTable.ID.eq(token.id()), token.clinicId()).orElseThrow();
            trail.append(tx, chain, act, Note.created("api-token", token.id(), 1, kept));
            return kept;
        });
    }

    @Override
    public Optional<ApiToken> find(String sha256) {
        return db.read(query -> query.select(FIELDS)
                .from(ApiTokenTable.API_TOKEN)
                .where(ApiTokenTable.TOKEN_SHA256.eq(sha256))
                .fetchOptional(ApiTokenStore::token));
    }

    private static Optional<ApiToken> find(DSLContext query, Condition which, String clinicId) {
        return query.select(FIELDS)
                .from(ApiTokenTable.API_TOKEN)
                .where(which, ApiTokenTable.CLINIC_ID.eq(clinicId))
                .fetchOptional(ApiTokenStore::token);
    }

    @Override
    public List<ApiToken> list(String clinicId) {
        return db.read(query -> query.select(FIELDS)
                .from(ApiTokenTable.API_TOKEN)
                .where(ApiTokenTable.CLINIC_ID.eq(clinicId))
                .orderBy(ApiTokenTable.CREATED_AT.desc(), ApiTokenTable.ID)
                .fetch(ApiTokenStore::token));
    }

    @Override
    public void revoke(String tokenId, Act act) {
        Chain chain = Chain.ofClinic(act.clinicId());
        trail.write(chain, tx -> {
            ApiToken before = find(tx, ApiTokenTable.ID.eq(tokenId), act.clinicId())
                    .orElseThrow(() -> new NotThere("token", tokenId));
            if (before.revokedAt().isEmpty()) {
                tx.update(ApiTokenTable.API_TOKEN)
                        .set(ApiTokenTable.REVOKED_AT, act.at())
                        .where(ApiTokenTable.ID.eq(tokenId))
                        .execute();
                trail.append(tx, chain, act, Note.plain(Action.LINK_REVOKED, "api-token", tokenId));
            }
            return before;
        });
    }

    @Override
    public void used(ApiToken token, Instant at) {
        if (token.lastUsedAt().filter(last -> last.plus(USE_NOTED).isAfter(at)).isPresent()) {
            return;
        }
        db.write(tx -> tx.update(ApiTokenTable.API_TOKEN)
                .set(ApiTokenTable.LAST_USED_AT, at)
                .where(ApiTokenTable.ID.eq(token.id()))
                .execute());
    }

    @Override
    public Once begin(String tokenId, String key, String requestSha256, Instant at) {
        return once.begin(tokenId, key, requestSha256, at);
    }

    @Override
    public void finish(String tokenId, String key, String made) {
        once.finish(tokenId, key, made);
    }

    private static String text(Set<ApiScope> scopes) {
        return scopes.stream().map(ApiScope::key).sorted().collect(Collectors.joining(" "));
    }

    private static ApiToken token(Record row) {
        var scopes = EnumSet.noneOf(ApiScope.class);
        Arrays.stream(row.get(ApiTokenTable.SCOPES).split(" "))
                .forEach(key -> ApiScope.find(key).ifPresent(scopes::add));
        return new ApiToken(
                row.get(ApiTokenTable.ID),
                row.get(ApiTokenTable.CLINIC_ID),
                row.get(ApiTokenTable.STAFF_ID),
                row.get(ApiTokenTable.LABEL),
                scopes,
                row.get(ApiTokenTable.CREATED_AT),
                row.get(ApiTokenTable.CREATED_BY),
                row.get(ApiTokenTable.EXPIRES_AT),
                Optional.ofNullable(row.get(ApiTokenTable.REVOKED_AT)),
                Optional.ofNullable(row.get(ApiTokenTable.LAST_USED_AT)));
    }
}
