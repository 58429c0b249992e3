package slipway.store.db;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.Function;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.conf.Settings;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;

/** Reading and writing, each through its own connections. */
public final class Db {
    private final DSLContext reader;
    private final DSLContext writer;
    private final Optional<GroupCommit> together;

    /** Over two sources; {@code writing} of SQLite must be one connection, or writers would meet busy files. */
    public Db(Pools pools, SQLDialect dialect) {
        // Logging is off: it would show the values of records.
        var settings = new Settings()
                .withExecuteLogging(false)
                .withRenderSchema(false)
                .withFetchWarnings(false)
                .withReturnAllOnUpdatableRecord(false);
        reader = DSL.using(pools.reading(), dialect, settings);
        writer = DSL.using(pools.writing(), dialect, settings);
        // PostgreSQL lets those who commit at once share one write to the disk by itself.
        together = dialect == SQLDialect.SQLITE ? Optional.of(new GroupCommit(writer)) : Optional.empty();
    }

    /** Runs a query that changes nothing; the database refuses changes here. */
    public <T> T read(Function<DSLContext, T> query) {
        try {
            return query.apply(reader);
        } catch (DataAccessException e) {
            throw failure(e);
        }
    }

    /** Runs several queries that see the same state. */
    public <T> T readTogether(Function<DSLContext, T> queries) {
        try {
            return reader.transactionResult(inner -> queries.apply(inner.dsl()));
        } catch (DataAccessException e) {
            throw failure(e);
        }
    }

    /** Runs one transaction: all of it is kept, or nothing if it throws. */
    public <T> T write(Function<DSLContext, T> transaction) {
        try {
            if (together.isPresent()) {
                return together.get().write(transaction);
            }
            return writer.transactionResult(inner -> transaction.apply(inner.dsl()));
        } catch (DataAccessException e) {
            throw failure(e);
        }
    }

    /** The time by the clock of the database, which all servers share; on SQLite that of this machine. */
    public Instant now(DSLContext query) {
        String micros = query.dialect() == SQLDialect.SQLITE
                ? "cast(unixepoch('subsec') * 1000000 as integer)"
                : "cast(extract(epoch from clock_timestamp()) * 1000000 as bigint)";
        return Instant.EPOCH.plus(query.fetchValue(DSL.field(micros, Long.class)), ChronoUnit.MICROS);
    }

    private static StoreFailure failure(DataAccessException e) {
        return new StoreFailure("the database could not do it (SQL state %s)".formatted(e.sqlState()), e);
    }
}
