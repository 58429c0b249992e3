package slipway.store.faults;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jooq.SQLDialect;
import slipway.care.record.person.PersonDetails;
import slipway.mechanics.body.Side;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.store.db.Migrations;
import slipway.store.db.Pools;

/** The database that is written to while the kill comes, and a second one on its way from the first tables. */
final class KillTarget implements AutoCloseable {
    private static final int EPISODES = 4;

    private final Path folder;
    private final Optional<KillServer> server;
    private final List<String> episodes = new ArrayList<>();
    /** Everything that was ever confirmed in the database that stands now. */
    final List<String> confirmed = new ArrayList<>();

    private String name = "";

    private KillTarget(Path folder, Optional<KillServer> server) {
        this.folder = folder;
        this.server = server;
    }

    static KillTarget sqlite(Path folder) throws IOException {
        Files.createDirectories(folder);
        return new KillTarget(folder, Optional.empty());
    }

    static KillTarget postgres(Path folder) throws IOException {
        Files.createDirectories(folder);
        return new KillTarget(folder, Optional.of(new KillServer(folder)));
    }

    Optional<KillServer> server() {
        return server;
    }

    List<String> episodes() {
        return List.copyOf(episodes);
    }

    /** Makes a new database for the rounds to come. */
    void fresh(int round) throws IOException, SQLException {
        episodes.clear();
        confirmed.clear();
        name = "r" + round;
        make(name);
        try (Store store = Store.open(settings(KillTask.SAVES))) {
            var records = store.records();
            records.clinics().add("Harbour Street", "therapy", "", "112", true, KillWriter.ACT);
            String person = records.people().add(details(), KillWriter.ACT).id();
            for (int i = 0; i < EPISODES; i++) {
                episodes.add(records.charts()
                        .begin(person, Side.LEFT, "import", Map.of(), KillWriter.ACT)
                        .episode()
                        .id());
            }
        }
    }

    /** Makes a database with the first tables and what they held. */
    void freshFirstVersion() throws IOException, SQLException {
        make("first");
        StoreSettings settings = settings(KillTask.MIGRATION);
        boolean sqlite = server.isEmpty();
        try (Pools pools = sqlite
                ? Pools.sqlite(settings.url(), 1)
                : Pools.postgres(settings.url(), settings.user(), settings.password(), 2, 1)) {
            Migrations.runUpTo("1", pools.writing(), sqlite ? SQLDialect.SQLITE : SQLDialect.POSTGRES);
        }
        try (Connection connection = connection(settings);
                var statement = connection.createStatement();
                var in = Objects.requireNonNull(Store.class.getResourceAsStream("first-version.sql"))) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList()) {
                if (line.startsWith("insert")) {
                    statement.execute(line.replace("${bytes-open}", sqlite ? "X'" : "'\\x")
                            .replace("${bytes-close}", "'"));
                }
            }
        }
    }

    private void make(String database) throws IOException, SQLException {
        if (server.isEmpty()) {
            for (String end : List.of("", "-wal", "-shm")) {
                Files.deleteIfExists(folder.resolve(database + ".db" + end));
            }
            Files.createFile(folder.resolve(database + ".db"));
            return;
        }
        try (Connection connection =
                        connection(StoreSettings.postgres(server.get().url("postgres"), "postgres", "x"));
                var statement = connection.createStatement()) {
            statement.execute("drop database if exists " + database + " with (force)");
            statement.execute("create database " + database);
        }
    }

    StoreSettings settings(KillTask task) {
        String database = task == KillTask.MIGRATION ? "first" : name;
        return server.isPresent()
                ? StoreSettings.postgres(server.get().url(database), "postgres", "x")
                : new StoreSettings(
                        "jdbc:sqlite:" + folder.resolve(database + ".db").toAbsolutePath(), "", "", 4, 4);
    }

    /** What the database says of itself: "ok", or what is wrong. */
    String integrity(KillTask task) throws SQLException {
        if (server.isPresent()) {
            return "ok";
        }
        try (Connection connection = connection(settings(task));
                var statement = connection.createStatement();
                var rows = statement.executeQuery("pragma integrity_check")) {
            return rows.getString(1);
        }
    }

    /** The newest script that has run as a whole. */
    int tablesVersion(KillTask task) throws SQLException {
        try (Connection connection = connection(settings(task));
                var statement = connection.createStatement();
                var rows = statement.executeQuery("select count(*) from schema_history where success")) {
            return rows.next() ? rows.getInt(1) : 0;
        }
    }

    private static Connection connection(StoreSettings settings) throws SQLException {
        return DriverManager.getConnection(settings.url(), settings.user(), settings.password());
    }

    private static PersonDetails details() {
        return PersonDetails.invented("Invented Person");
    }

    @Override
    public void close() throws IOException {
        if (server.isPresent()) {
            server.get().close();
        }
    }
}
