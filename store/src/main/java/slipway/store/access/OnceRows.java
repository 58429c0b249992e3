package slipway.store.access;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.Record2;
import slipway.care.record.access.ApiTokens.Once;
import slipway.store.db.Db;
import slipway.store.tables.ApiRequestTable;

/** Keys under which something was asked once only. They are forgotten after some days. */
final class OnceRows {
    private static final Duration KEPT = Duration.ofDays(7);

    private final Db db;

    OnceRows(Db db) {
        this.db = db;
    }

    Once begin(String tokenId, String key, String requestSha256, Instant at) {
        return db.write(tx -> {
            tx.deleteFrom(ApiRequestTable.API_REQUEST)
                    .where(ApiRequestTable.AT.lt(at.minus(KEPT)))
                    .execute();
            int added = tx.insertInto(ApiRequestTable.API_REQUEST)
                    .set(ApiRequestTable.TOKEN_ID, tokenId)
                    .set(ApiRequestTable.REQUEST_KEY, key)
                    .set(ApiRequestTable.REQUEST_SHA256, requestSha256)
                    .set(ApiRequestTable.AT, at)
                    .onConflictDoNothing()
                    .execute();
            if (added == 1) {
                return new Once.First();
            }
            Record2<String, String> known = tx.select(ApiRequestTable.REQUEST_SHA256, ApiRequestTable.MADE)
                    .from(ApiRequestTable.API_REQUEST)
                    .where(of(tokenId, key))
                    .fetchSingle();
            if (!known.value1().equals(requestSha256)) {
                return new Once.Other();
            }
            return Optional.ofNullable(known.value2())
                    .map(made -> (Once) new Once.Before(made))
                    .orElseGet(Once.Unfinished::new);
        });
    }

    void finish(String tokenId, String key, String made) {
        db.write(tx -> tx.update(ApiRequestTable.API_REQUEST)
                .set(ApiRequestTable.MADE, made)
                .where(of(tokenId, key))
                .execute());
    }

    private static Condition of(String tokenId, String key) {
        return ApiRequestTable.TOKEN_ID.eq(tokenId).and(ApiRequestTable.REQUEST_KEY.eq(key));
    }
}
