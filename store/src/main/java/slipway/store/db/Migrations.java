package slipway.store.db;

import java.util.Map;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jooq.SQLDialect;

/** Brings the tables up to date; one set of statements for both databases. */
public final class Migrations {
    private static final Map<SQLDialect, Map<String, String>> WORDS = Map.of(
            SQLDialect.SQLITE, Map.of("bytes", "blob", "key", "text"),
            SQLDialect.POSTGRES, Map.of("bytes", "bytea", "key", "text collate \"C\""));

    private Migrations() {}

    /** Runs what has not run yet; safe when several nodes start at once. Gives how many scripts ran. */
    public static int run(DataSource source, SQLDialect dialect) {
        return runUpTo("latest", source, dialect);
    }

    /** Runs no script beyond a version, to test an upgrade from there. */
    public static int runUpTo(String version, DataSource source, SQLDialect dialect) {
        return Flyway.configure(Migrations.class.getClassLoader())
                .dataSource(source)
                .locations("classpath:slipway/store/migration")
                .placeholders(WORDS.getOrDefault(dialect, Map.of()))
                .target(version)
                .table("schema_history")
                // Tables of a later program are not for this one.
                .ignoreMigrationPatterns(new String[0])
                .cleanDisabled(true)
                .loggers("slf4j")
                .load()
                .migrate()
                .migrationsExecuted;
    }
}
