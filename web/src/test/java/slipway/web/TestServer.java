package slipway.web;

import java.io.IOException;
import java.io.UncheckedIOException;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import slipway.care.record.Records;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.web.demo.DemoClinic;

/** A server on records of its own, with the people of the demo, and hands to reach it. */
public final class TestServer implements AutoCloseable {
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private static @Nullable TestServer shared;

    private final Store store;
    private final WebOptions options;
    private final WebServer server;

    /** Starts on an empty folder. */
    public TestServer(Path folder, boolean filled) {
        this(folder, Optional.empty(), filled);
    }

    private TestServer(Path folder, Optional<String> publicAddress, boolean filled) {
        store = Store.open(StoreSettings.inFolder(folder));
        options = new WebOptions(0, "127.0.0.1", folder, Optional.empty(), publicAddress, filled);
        server = WebServer.start(options, store, Clock.systemUTC(), Map.of());
        if (filled) {
            server.part(DemoClinic.class).fill();
        }
    }

    /** A filled one that was told how browsers reach it. */
    public static TestServer reachedAt(String publicAddress, Path folder) {
        return new TestServer(folder, Optional.of(publicAddress), true);
    }

    /** A second server on the same records. */
    public WebServer beside() {
        return WebServer.start(options, store, Clock.systemUTC(), Map.of());
    }

    /** One server for all tests that get along with each other; it ends with the process. */
    public static synchronized TestServer shared() {
        if (shared == null) {
            shared = ofItsOwn();
        }
        return shared;
    }

    /** A server for tests that leave the people of the demo other than they found them; it ends with the process. */
    public static TestServer ofItsOwn() {
        try {
            TestServer started = new TestServer(Files.createTempDirectory("slipway-test"), true);
            Runtime.getRuntime().addShutdownHook(new Thread(started::close));
            return started;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Records records() {
        return store.records();
    }

    public WebServer server() {
        return server;
    }

    public String address() {
        return "http://127.0.0.1:" + server.port();
    }

    /** Somebody with a browser, not signed in. */
    public Visitor visitor() {
        return new Visitor(address());
    }

    /** Somebody of the demo, signed in. */
    public Visitor signedIn(String login) {
        return visitor().signIn(login, Objects.requireNonNull(DemoClinic.SIGN_INS.get(login)));
    }

    @Override
    public void close() {
        server.close();
        store.close();
    }

    /** A browser without scripts: it keeps cookies and the proof that a form came from us. */
    public static final class Visitor {
        private final CookieManager cookies;
        private final HttpClient client;
        private final String address;
        private String token;

        private Visitor(String address) {
            this(address, new CookieManager(), "");
        }

        private Visitor(String address, CookieManager cookies, String token) {
            this.address = address;
            this.cookies = cookies;
            this.client = HttpClient.newBuilder().cookieHandler(cookies).build();
            this.token = token;
        }

        /** The same browser at another server of this machine. */
        public Visitor movedTo(WebServer server) {
            return new Visitor("http://127.0.0.1:" + server.port(), cookies, token);
        }

        public Visitor signIn(String login, String password) {
            get("/sign-in");
            var answer = post("/sign-in", "login", login, "password", password);
            if (answer.statusCode() != 302 || location(answer).contains("sign-in")) {
                throw new IllegalStateException("not signed in as " + login + ": " + answer.statusCode());
            }
            get("/account");
            return this;
        }

        /** Without following where the answer points to. */
        public HttpResponse<String> get(String path) {
            var answer = send(HttpRequest.newBuilder(URI.create(address + path)).GET());
            Matcher found = TOKEN.matcher(answer.body());
            if (found.find()) {
                token = found.group(1);
            }
            return answer;
        }

        /** A form with the token of the last page, as names and values in turn. */
        public HttpResponse<String> post(String path, String... fields) {
            List<String> all = new ArrayList<>(List.of(fields));
            all.add("_csrf");
            all.add(token);
            return send(path, form(all));
        }

        /** A form without the token. */
        public HttpResponse<String> postBare(String path, String... fields) {
            return send(path, form(List.of(fields)));
        }

        public String cookie(String name) {
            return cookies.getCookieStore().getCookies().stream()
                    .filter(cookie -> cookie.getName().equals(name))
                    .map(java.net.HttpCookie::getValue)
                    .findFirst()
                    .orElse("");
        }

        public HttpResponse<String> send(HttpRequest.Builder request) {
            try {
                return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        }

        /** The same for an answer that is no text. */
        public HttpResponse<byte[]> bytes(HttpRequest.Builder request) {
            try {
                return client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        }

        private HttpResponse<String> send(String path, String body) {
            return send(HttpRequest.newBuilder(URI.create(address + path))
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofString(body)));
        }

        public String token() {
            return token;
        }

        private static String form(List<String> fields) {
            var body = new StringBuilder();
            for (int i = 0; i < fields.size(); i += 2) {
                body.append(i == 0 ? "" : "&")
                        .append(URLEncoder.encode(fields.get(i), StandardCharsets.UTF_8))
                        .append('=')
                        .append(URLEncoder.encode(fields.get(i + 1), StandardCharsets.UTF_8));
            }
            return body.toString();
        }
    }

    /** A page without what differs in every answer: the proof of its forms. */
    public static String plain(HttpResponse<String> answer) {
        return TOKEN.matcher(answer.body()).replaceAll("");
    }

    /** Where an answer points to; empty text if nowhere. */
    public static String location(HttpResponse<?> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }
}
