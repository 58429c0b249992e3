package slipway.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/** The two databases that every test of this module runs on. There is no way to skip one. */
enum Databases {
    SQLITE {
        @Override
        Fresh fresh() {
            Path folder = folder();
            return new Fresh(StoreSettings.inFolder(folder), () -> delete(folder));
        }
    },
    POSTGRES {
        @Override
        Fresh fresh() {
            String name = "t" + COUNT.incrementAndGet();
            run(Server.URL, "create database " + name + " lc_collate 'C.UTF-8' lc_ctype 'C.UTF-8' template template0");
            String url = Server.URL.replace("/postgres", "/" + name);
            return new Fresh(
                    StoreSettings.postgres(url, "postgres", "postgres"),
                    () -> run(Server.URL, "drop database " + name + " with (force)"));
        }
    };

    private static final AtomicInteger COUNT = new AtomicInteger();

    /** An empty database that is gone when closed. */
    record Fresh(StoreSettings settings, Runnable cleanUp) implements AutoCloseable {
        /** Runs a statement behind the store's back. */
        void run(String sql) {
            Databases.run(settings, sql);
        }

        /** Whether a text stands in any column of any table. */
        boolean holds(String text) {
            return Databases.holds(settings, text);
        }

        @Override
        public void close() {
            cleanUp.run();
        }
    }

    /** One server for all tests of this process; it ends with it. */
    private static final class Server {
        static final String URL = start();

        private static String start() {
            try {
                EmbeddedPostgres server = EmbeddedPostgres.builder().start();
                return server.getJdbcUrl("postgres", "postgres").split("\\?", 2)[0];
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    abstract Fresh fresh();

    private static Path folder() {
        try {
            return Files.createTempDirectory("slipway-store");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean holds(StoreSettings settings, String text) {
        try (Connection connection = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                var tables = connection.getMetaData().getTables(null, null, "%", new String[] {"TABLE"})) {
            boolean found = false;
            while (tables.next()) {
                found |= holds(connection, tables.getString("TABLE_NAME"), text);
            }
            return found;
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean holds(Connection connection, String table, String text) throws SQLException {
        try (var statement = connection.createStatement();
                var rows = statement.executeQuery("select * from " + table)) {
            boolean found = false;
            while (rows.next()) {
                for (int column = 1; column <= rows.getMetaData().getColumnCount(); column++) {
                    found |= String.valueOf(rows.getString(column))
                            .toLowerCase(Locale.ROOT)
                            .contains(text.toLowerCase(Locale.ROOT));
                }
            }
            return found;
        }
    }

    private static void run(String url, String sql) {
        run(StoreSettings.postgres(url, "postgres", "postgres"), sql);
    }

    private static void run(StoreSettings settings, String sql) {
        try (Connection connection = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                var statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(sql, e);
        }
    }
}
