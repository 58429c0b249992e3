package slipway.benchmarks.pages;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.security.crypto.password.PasswordEncoder;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.person.PersonDetails;
import slipway.mechanics.body.Side;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.web.WebOptions;
import slipway.web.WebServer;

/**
 * Today with 60 people in care, as closed episodes of others pile up in the same clinic. Prints one row per size: the
 * median of the query alone and of the whole page. Arguments: sizes in rising order.
 */
public final class TodayScale {
    private static final int IN_CARE = 60;
    private static final int ROUNDS = 200;
    private static final int WARM_UP = 2000;
    private static final String PASSWORD = "only for this measurement";
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final Records records;
    private final Act act;
    private int episodes;

    private TodayScale(Records records, Act act) {
        this.records = records;
        this.act = act;
    }

    /** Runs and prints. */
    public static void main(String[] sizes) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("slipway-today");
        try (Store store = Store.open(StoreSettings.inFolder(folder))) {
            var options = new WebOptions(0, "127.0.0.1", folder, Optional.empty(), Optional.empty(), false);
            try (WebServer server = WebServer.start(options, store, Clock.systemUTC(), Map.of())) {
                measure(store, server, sizes);
            }
        }
    }

    private static void measure(Store store, WebServer server, String[] sizes)
            throws IOException, InterruptedException {
        Records records = store.records();
        var start = new Act("benchmark", Role.PROGRAM, UUID.randomUUID().toString(), Instant.now());
        records.clinics().add("Benchmark", "therapy", "", "112", true, start);
        String hash = Objects.requireNonNull(server.part(PasswordEncoder.class).encode(PASSWORD));
        StaffAccount therapist =
                records.staff().add("bench", "Bench", EnumSet.of(Role.THERAPIST), Reach.CLINIC, hash, start);
        var scale = new TodayScale(records, new Act(therapist.id(), Role.THERAPIST, start.clinicId(), Instant.now()));
        for (int i = 0; i < IN_CARE; i++) {
            scale.episode(therapist.id(), EpisodeState.OPEN);
        }
        HttpClient client = signedIn(server);
        // The first size must not pay for what the machine learns while it runs.
        for (int i = 0; i < WARM_UP; i++) {
            get(client, server);
        }
        System.out.printf(Locale.ROOT, "episodes,query_ms,page_ms%n");
        for (String size : sizes) {
            while (scale.episodes < Integer.parseInt(size)) {
                scale.episode("somebody else", EpisodeState.CLOSED);
            }
            double query = median(() -> records.caseload().today(therapist.id(), 200, scale.act));
            double page = median(() -> get(client, server));
            System.out.printf(Locale.ROOT, "%d,%.2f,%.2f%n", scale.episodes, query, page);
        }
    }

    private void episode(String therapistId, EpisodeState state) {
        var details = PersonDetails.invented("Person " + episodes);
        Act then = act.at(act.at().minus(Duration.ofMinutes(episodes)));
        String personId = records.people().add(details, then).id();
        Chart chart = records.charts().begin(personId, Side.LEFT, therapistId, Map.of(), then);
        if (state != EpisodeState.OPEN) {
            chart.change(chart.episode().version(), Side.LEFT, therapistId, state)
                    .orThrow();
        }
        episodes++;
    }

    /** Something to be timed. */
    private interface Task {
        void run() throws IOException, InterruptedException;
    }

    private static double median(Task task) throws IOException, InterruptedException {
        var times = new long[ROUNDS];
        for (int i = -ROUNDS / 4; i < ROUNDS; i++) {
            long begin = System.nanoTime();
            task.run();
            if (i >= 0) {
                times[i] = System.nanoTime() - begin;
            }
        }
        Arrays.sort(times);
        return times[ROUNDS / 2] / 1e6;
    }

    private static void get(HttpClient client, WebServer server) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(address(server, "/today")).GET().build(), HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException("Today answered " + answer.statusCode());
        }
    }

    private static HttpClient signedIn(WebServer server) throws IOException, InterruptedException {
        HttpClient client =
                HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
        String page = client.send(
                        HttpRequest.newBuilder(address(server, "/sign-in"))
                                .GET()
                                .build(),
                        HttpResponse.BodyHandlers.ofString())
                .body();
        Matcher token = TOKEN.matcher(page);
        if (!token.find()) {
            throw new IllegalStateException("the sign-in page has no form");
        }
        String form = "login=bench&password=" + URLEncoder.encode(PASSWORD, StandardCharsets.UTF_8) + "&_csrf="
                + URLEncoder.encode(token.group(1), StandardCharsets.UTF_8);
        client.send(
                HttpRequest.newBuilder(address(server, "/sign-in"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        return client;
    }

    private static URI address(WebServer server, String path) {
        return URI.create("http://127.0.0.1:" + server.port() + path);
    }
}
