package slipway.store.db;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import javax.sql.DataSource;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;

/**
 * Two pools of connections. On SQLite one connection writes, in IMMEDIATE transactions, so that writers queue up instead
 * of failing, and the readers cannot write; on PostgreSQL the readers' transactions are read-only.
 */
public final class Pools implements AutoCloseable {
    private static final Duration WAIT = Duration.ofSeconds(30);
    private static final int BUSY_MS = 5_000;

    /** A page must not hang for long when the server is away; a busy one gives connections back sooner. */
    private static final Duration SERVER_WAIT = Duration.ofSeconds(5);

    /** Longer than any statement: behind it the network has swallowed the answer. */
    private static final Duration SILENCE = Duration.ofMinutes(5);

    private final HikariDataSource writing;
    private final HikariDataSource reading;
    private final String url;

    private Pools(HikariDataSource writing, HikariDataSource reading, String url) {
        this.url = url;
        this.writing = writing;
        this.reading = reading;
    }

    /** Pools over a SQLite file that exists. */
    public static Pools sqlite(String url, int readers) {
        return open(url, config("write", 1, sqlite(url, TransactionMode.IMMEDIATE)), () -> {
            HikariConfig reading = config("read", readers, sqlite(url, TransactionMode.DEFERRED));
            reading.setConnectionInitSql("pragma query_only=1");
            return reading;
        });
    }

    /** Pools over a PostgreSQL server. */
    public static Pools postgres(String url, String user, String password, int writers, int readers) {
        return open(url, postgres("write", writers, url, user, password), () -> {
            HikariConfig reading = postgres("read", readers, url, user, password);
            reading.setReadOnly(true);
            return reading;
        });
    }

    private static Pools open(String url, HikariConfig write, java.util.function.Supplier<HikariConfig> read) {
        var writing = new HikariDataSource(write);
        try {
            return new Pools(writing, new HikariDataSource(read.get()), url);
        } catch (RuntimeException e) {
            writing.close();
            throw e;
        }
    }

    private static DataSource sqlite(String url, TransactionMode mode) {
        var config = new SQLiteConfig();
        config.setJournalMode(JournalMode.WAL);
        config.setSynchronous(SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        // What was erased is overwritten in the file, not only forgotten.
        config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "on");
        config.setBusyTimeout(BUSY_MS);
        config.setTransactionMode(mode);
        var source = new SQLiteDataSource(config);
        source.setUrl(url);
        return source;
    }

    private static HikariConfig config(String name, int size, DataSource source) {
        HikariConfig config = config(name, size);
        config.setDataSource(source);
        return config;
    }

    private static HikariConfig config(String name, int size) {
        var config = new HikariConfig();
        config.setPoolName("slipway-" + name);
        config.setMaximumPoolSize(size);
        config.setConnectionTimeout(WAIT.toMillis());
        return config;
    }

    private static HikariConfig postgres(String name, int size, String url, String user, String password) {
        HikariConfig config = config(name, size);
        config.setJdbcUrl(url);
        config.setUsername(user);
        config.setPassword(password);
        config.setConnectionTimeout(SERVER_WAIT.toMillis());
        config.addDataSourceProperty("connectTimeout", "5");
        config.addDataSourceProperty("socketTimeout", Long.toString(SILENCE.toSeconds()));
        config.addDataSourceProperty("tcpKeepAlive", "true");
        // The server's details of an error quote the values of the row.
        config.addDataSourceProperty("logServerErrorDetail", "false");
        return config;
    }

    /** For what writes; one connection on SQLite. */
    public DataSource writing() {
        return writing;
    }

    /** A connection of its own beside the pools, with the rights of a writer; only on SQLite. */
    public Connection apart() throws SQLException {
        return DriverManager.getConnection(url);
    }

    /** For what only reads; the database refuses changes. */
    public DataSource reading() {
        return reading;
    }

    @Override
    public void close() {
        reading.close();
        writing.close();
    }
}
