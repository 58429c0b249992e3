package slipway.store.backup;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.jooq.SQLDialect;
import slipway.store.db.Migrations;
import slipway.store.db.Pools;

/** The records of one moment as a SQLite file, taken while others go on writing. */
final class Snapshot {
    private Snapshot() {}

    static void ofSqlite(Connection connection, Path file) throws SQLException {
        try (var statement = connection.prepareStatement("vacuum into ?")) {
            statement.setString(1, file.toString());
            statement.execute();
        }
        dropSessions(file);
    }

    static void ofPostgres(DataSource reading, Path file) throws SQLException {
        try (Pools pools = Pools.sqlite("jdbc:sqlite:" + file.toAbsolutePath(), 1)) {
            Migrations.run(pools.writing(), SQLDialect.SQLITE);
        }
        try (Connection from = reading.getConnection();
                Connection to = SqliteFiles.open(file)) {
            from.setAutoCommit(false);
            from.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
            to.setAutoCommit(false);
            new TableCopy(to, from, to).run();
            to.commit();
            from.rollback();
        }
        dropSessions(file);
    }

    /** Whoever was signed in then is not when it comes back, and nobody can sign with what lay in a backup. */
    private static void dropSessions(Path file) throws SQLException {
        try (Connection connection = SqliteFiles.open(file);
                var statement = connection.createStatement()) {
            statement.execute("pragma secure_delete = on");
            statement.execute("delete from staff_session");
            statement.execute("delete from server_key");
        }
    }
}
