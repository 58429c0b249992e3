package slipway.benchmarks.pages;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.security.crypto.password.PasswordEncoder;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.store.Store;
import slipway.web.WebOptions;
import slipway.web.WebServer;

/** A server over a store with one clinic, and one account that is signed in. */
final class SignedIn implements AutoCloseable {
    private static final String PASSWORD = "only for this measurement";
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final WebServer server;
    private final Act act;
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    private SignedIn(WebServer server, Act act) {
        this.server = server;
        this.act = act;
    }

    /** Starts the server on an empty store, makes the clinic and the account, and signs it in. */
    static SignedIn in(Store store, Path folder, Role role) throws IOException, InterruptedException {
        var options = new WebOptions(0, "127.0.0.1", folder, Optional.empty(), Optional.empty(), false);
        WebServer server = WebServer.start(options, store, Clock.systemUTC(), Map.of());
        var program = new Act("benchmark", Role.PROGRAM, UUID.randomUUID().toString(), Instant.now());
        store.records().clinics().add("Benchmark", "therapy", "", "112", true, program);
        String hash = Objects.requireNonNull(server.part(PasswordEncoder.class).encode(PASSWORD));
        String id = store.records()
                .staff()
                .add("bench", "Bench", EnumSet.of(role), Reach.CLINIC, hash, program)
                .id();
        var signedIn = new SignedIn(server, new Act(id, role, program.clinicId(), program.at()));
        signedIn.signIn();
        return signedIn;
    }

    /** What the account does, when it was made. */
    Act act() {
        return act;
    }

    /** The page at a path. */
    String get(String path) throws IOException, InterruptedException {
        return checked(path, HttpRequest.newBuilder(address(path)).GET());
    }

    /** Sends a form, and follows nothing. */
    String post(String path, String form) throws IOException, InterruptedException {
        return checked(
                path,
                HttpRequest.newBuilder(address(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form)));
    }

    /** What a form of a page has to carry so that it is taken. */
    static String token(String page) {
        Matcher token = TOKEN.matcher(page);
        if (!token.find()) {
            throw new IllegalStateException("the page has no form");
        }
        return "_csrf=" + URLEncoder.encode(token.group(1), StandardCharsets.UTF_8);
    }

    private String checked(String path, HttpRequest.Builder request) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200 && answer.statusCode() != 302) {
            throw new IllegalStateException(path + " answered " + answer.statusCode());
        }
        return answer.body();
    }

    private void signIn() throws IOException, InterruptedException {
        String password = URLEncoder.encode(PASSWORD, StandardCharsets.UTF_8);
        post("/sign-in", "login=bench&password=" + password + "&" + token(get("/sign-in")));
    }

    private URI address(String path) {
        return URI.create("http://127.0.0.1:" + server.port() + path);
    }

    /** Something to be timed. */
    interface Task {
        void run() throws IOException, InterruptedException;
    }

    /** Milliseconds of one run after the other, in rising order; a fourth as many go before without being counted. */
    static double[] millis(int rounds, Task task) throws IOException, InterruptedException {
        var times = new double[rounds];
        for (int i = -rounds / 4; i < rounds; i++) {
            long begin = System.nanoTime();
            task.run();
            if (i >= 0) {
                times[i] = (System.nanoTime() - begin) / 1e6;
            }
        }
        Arrays.sort(times);
        return times;
    }

    static double median(int rounds, Task task) throws IOException, InterruptedException {
        return millis(rounds, task)[rounds / 2];
    }

    @Override
    public void close() {
        server.close();
    }
}
