package slipway.app.nodes;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.password.PasswordEncoder;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.web.WebOptions;
import slipway.web.WebServer;
import slipway.web.demo.DemoClinic;

/**
 * Two servers in one process on one PostgreSQL, each with its own connections and memory. The same with processes, one of
 * which is killed under load, is run by hand: {@code app/src/test/shell/several-nodes}.
 */
class NodesTest {
    static final String PASSWORD = "only for the tests of servers";
    private static final List<Node> NODES = new ArrayList<>();
    private static EmbeddedPostgres postgres;

    /** One server. */
    private record Node(Store store, WebServer server) implements AutoCloseable {
        String address() {
            return "http://127.0.0.1:" + server.port();
        }

        @Override
        public void close() {
            server.close();
            store.close();
        }
    }

    @BeforeAll
    static void start() throws Exception {
        postgres = EmbeddedPostgres.builder().start();
        String url = postgres.getJdbcUrl("postgres", "postgres").split("\\?", 2)[0];
        StoreSettings settings = StoreSettings.postgres(url, "postgres", "postgres");
        // Both at once on an empty database: one makes the tables, the other waits.
        var stores = List.of(
                CompletableFuture.supplyAsync(() -> Store.open(settings)),
                CompletableFuture.supplyAsync(() -> Store.open(settings)));
        // It stands still, so that a pause after wrong passwords is not over by the time that a busy machine gets
        // there.
        Clock clock = Clock.fixed(Instant.now(), ZoneOffset.UTC);
        for (CompletableFuture<Store> store : stores) {
            var options = new WebOptions(0, "127.0.0.1", Path.of("."), Optional.of(url), Optional.empty(), true);
            NODES.add(new Node(store.get(), WebServer.start(options, store.get(), clock, Map.of())));
        }
        fill(NODES.get(0).store(), NODES.get(0).server());
    }

    /** Less than the demo, which would take longer than the tests. */
    static void fill(Store store, WebServer server) {
        var act = new Act("import", Role.PROGRAM, "harbour", Instant.now());
        store.records().clinics().add("Harbour Street", "therapy", "", "112", true, act);
        String hash = Objects.requireNonNull(server.part(PasswordEncoder.class).encode(PASSWORD));
        var staff = store.records().staff();
        staff.add("therapist", "Invented One", EnumSet.of(Role.THERAPIST), Reach.CLINIC, hash, act);
        staff.add("lead", "Invented Two", EnumSet.of(Role.LEAD), Reach.CLINIC, hash, act);
    }

    @AfterAll
    static void stop() throws Exception {
        NODES.forEach(Node::close);
        postgres.close();
    }

    private static String one() {
        return NODES.get(0).address();
    }

    private static String other() {
        return NODES.get(1).address();
    }

    @Test
    void whoSignsInOnOneGoesOnOnTheOtherAndIsOutOnBoth() throws Exception {
        var browser = new Browser();
        browser.signIn(one(), "therapist", PASSWORD);
        assertThat(browser.get(other(), "/today").statusCode()).isEqualTo(200);
        // The proof of the form came from the other server.
        browser.get(other(), "/account");
        assertThat(browser.post(one(), "/sign-out").statusCode()).isEqualTo(302);
        assertThat(Browser.location(browser.get(other(), "/today"))).contains("/sign-in");
    }

    @Test
    void reportsSentToBothAtOnceAreKeptOnceEach() throws Exception {
        var people = new People(NODES.get(0).store().records());
        People.AtHome person =
                people.make(NODES.get(0).server().part(DemoClinic.class), 1).get(0);
        var browser = new Browser();
        browser.enter(one(), person.code());
        String exercise = Reports.exercise(browser.get(other(), "/home"));
        List<String> sent = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            String id = "report-%04d".formatted(i);
            sent.add(id);
            var both = List.<Callable<Integer>>of(
                    () -> Reports.send(browser, one(), id, exercise),
                    () -> Reports.send(browser, other(), id, exercise));
            assertThat(all(both)).contains(200);
        }
        assertThat(people.reports(person)).containsAll(sent).doesNotHaveDuplicates();
        assertThat(NODES.get(1).store().records().trail().verify().breaks()).isEmpty();
    }

    /** A guesser who asks both servers at once is looked at a few times only. */
    @Test
    void guessesOnBothCountTogether() throws Exception {
        var guesses = new ArrayList<Callable<String>>();
        for (int i = 0; i < 24; i++) {
            String server = i % 2 == 0 ? one() : other();
            guesses.add(() -> {
                HttpResponse<String> answer = new Browser().signIn(server, "lead", "wrong wrong wrong wrong");
                return answer.body().contains("second") ? "waits" : "looked at";
            });
        }
        assertThat(all(guesses)).filteredOn("looked at"::equals).hasSize(4);
        HttpResponse<String> right = new Browser().signIn(one(), "lead", PASSWORD);
        assertThat(right.statusCode()).isEqualTo(200);
        assertThat(right.body()).contains("second");
    }

    private static <T> List<T> all(List<? extends Callable<T>> work) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(12);
        try {
            var done = new ArrayList<T>();
            for (Future<T> each : threads.invokeAll(work)) {
                done.add(each.get());
            }
            return done;
        } finally {
            threads.shutdownNow();
        }
    }
}
