package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Collections;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.chart.Chart;
import slipway.care.record.follow.CheckIn;
import slipway.store.db.StoreFailure;

/**
 * A file that cannot grow any more, while many write together. The bound on SQLite's pages gives the same error as a
 * full disk; PostgreSQL has no such bound, and a full disk stops its server as a whole.
 */
class FullDiskTest {
    private static final int WRITERS = 16;

    @Test
    void whatWasConfirmedIsThereAndTheRestIsRefused() throws Exception {
        try (var world = new World(Databases.SQLITE)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Chart chart = world.chart(world.person("Ines Palo", act), act);
            bound(world, pages(world) + 60);
            Set<String> confirmed = Collections.synchronizedSet(new HashSet<>());
            Set<String> refused = Collections.synchronizedSet(new HashSet<>());
            ExecutorService threads = Executors.newFixedThreadPool(WRITERS);
            for (int i = 0; i < 400; i++) {
                String id = "check-in-%04d".formatted(i);
                threads.execute(() -> send(chart, id, confirmed, refused));
            }
            threads.shutdown();
            assertThat(threads.awaitTermination(1, TimeUnit.MINUTES)).isTrue();

            assertThat(refused).isNotEmpty();
            assertThat(there(chart)).isEqualTo(confirmed);
            assertThat(world.records.trail().verify().breaks()).isEmpty();
            bound(world, 1_000_000);
            send(chart, "check-in-later", confirmed, refused);
            assertThat(there(chart)).contains("check-in-later");
        }
    }

    /** A read-only disk makes a database read-only, as does a PostgreSQL server that others have replaced. */
    @ParameterizedTest
    @EnumSource(Databases.class)
    void aDatabaseThatTakesNothingIsStillReadAndTakesAgainLater(Databases database) throws Exception {
        try (var world = new World(database)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Chart chart = world.chart(world.person("Ines Palo", act), act);
            Set<String> confirmed = new HashSet<>();
            Set<String> refused = new HashSet<>();
            send(chart, "check-in-before", confirmed, refused);
            readOnly(world, database, true);
            send(chart, "check-in-meanwhile", confirmed, refused);
            assertThat(refused).containsExactly("check-in-meanwhile");
            assertThat(there(chart)).containsExactly("check-in-before");
            readOnly(world, database, false);
            send(chart, "check-in-after", confirmed, refused);
            assertThat(there(chart)).isEqualTo(confirmed).contains("check-in-after");
        }
    }

    private static void readOnly(World world, Databases database, boolean on) throws Exception {
        try (Connection connection = world.store.writing().getConnection();
                var statement = connection.createStatement()) {
            if (database == Databases.SQLITE) {
                statement.execute("pragma query_only = " + on);
            } else {
                statement.execute("alter system set default_transaction_read_only = " + (on ? "on" : "off"));
                statement.execute("select pg_reload_conf()");
                // Takes hold when the sessions look at their signals, which is soon but not at once.
                for (int i = 0; i < 100 && shown(statement) != on; i++) {
                    TimeUnit.MILLISECONDS.sleep(20);
                }
            }
        }
    }

    private static boolean shown(Statement statement) throws SQLException {
        try (var rows = statement.executeQuery("show default_transaction_read_only")) {
            return rows.next() && rows.getString(1).equals("on");
        }
    }

    private static void send(Chart chart, String id, Set<String> confirmed, Set<String> refused) {
        try {
            chart.checkIns().add(id, "session", "some-glide", World.json("{\"words\":\"" + "x".repeat(500) + "\"}"));
            confirmed.add(id);
        } catch (StoreFailure e) {
            // The pages say "later" then, not "a fault".
            assertThat(e.isAway()).isTrue();
            refused.add(id);
        }
    }

    private static Set<String> there(Chart chart) {
        return chart.checkIns().list().stream().map(CheckIn::id).collect(Collectors.toSet());
    }

    private static int pages(World world) throws SQLException {
        try (Connection connection = world.store.reading().getConnection();
                var statement = connection.createStatement();
                var rows = statement.executeQuery("pragma page_count")) {
            return rows.getInt(1);
        }
    }

    /** Holds for the one connection that writes. */
    private static void bound(World world, int pages) throws SQLException {
        try (Connection connection = world.store.writing().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("pragma max_page_count = " + pages);
        }
    }
}
