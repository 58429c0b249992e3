package slipway.store.session;

import java.security.SecureRandom;
import java.time.Instant;
import slipway.store.db.Db;
import slipway.store.tables.ServerKeyTable;

/** Secrets with which the program signs what it hands out. All servers on one database have the same. */
public final class ServerKeys {
    private static final int BYTES = 32;

    private final Db db;
    private final SecureRandom random = new SecureRandom();

    public ServerKeys(Db db) {
        this.db = db;
    }

    /**
     * The secret of a name, 256 bits, made when it is asked for first. Two servers that ask at once get one and the
     * same. It is not in a backup: what was signed before a restore has to be signed anew.
     */
    public byte[] get(String name, Instant now) {
        return db.read(query -> query.select(ServerKeyTable.SECRET)
                        .from(ServerKeyTable.SERVER_KEY)
                        .where(ServerKeyTable.NAME.eq(name))
                        .fetchOptional(ServerKeyTable.SECRET))
                .orElseGet(() -> make(name, now));
    }

    private byte[] make(String name, Instant now) {
        var fresh = new byte[BYTES];
        random.nextBytes(fresh);
        return db.write(tx -> {
            tx.insertInto(ServerKeyTable.SERVER_KEY)
                    .set(ServerKeyTable.NAME, name)
                    .set(ServerKeyTable.SECRET, fresh)
                    .set(ServerKeyTable.MADE_AT, now)
                    .onConflict(ServerKeyTable.NAME)
                    .doNothing()
                    .execute();
            return tx.select(ServerKeyTable.SECRET)
                    .from(ServerKeyTable.SERVER_KEY)
                    .where(ServerKeyTable.NAME.eq(name))
                    .fetchSingle(ServerKeyTable.SECRET);
        });
    }
}
