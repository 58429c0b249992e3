package slipway.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.ApiScope;
import slipway.care.record.access.ApiToken;
import slipway.care.record.access.StaffAccount;
import slipway.web.TestServer;
import slipway.web.shell.Tokens;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Another program, on a server of its own. Every answer that it gets is held against the description. */
final class ApiCaller {
    private static @Nullable TestServer server;

    private final HttpClient client = HttpClient.newHttpClient();
    private final String token;

    private ApiCaller(String token) {
        this.token = token;
    }

    /** The server of the tests of this package, filled with the invented people of the demo. */
    static synchronized TestServer server() {
        if (server == null) {
            try {
                var started = new TestServer(Files.createTempDirectory("slipway-api"), true);
                Runtime.getRuntime().addShutdownHook(new Thread(started::close));
                server = started;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return server;
    }

    static Records records() {
        return server().records();
    }

    static StaffAccount account(String login) {
        return records().staff().credentials(login).orElseThrow().account();
    }

    static Act program() {
        return new Act("test", Role.PROGRAM, account("lead").clinicId(), Instant.now());
    }

    /** With a new token of an account. */
    static ApiCaller of(String login, ApiScope... scopes) {
        return new ApiCaller(token(account(login).id(), Duration.ofDays(1), scopes));
    }

    static ApiCaller nobody() {
        return new ApiCaller("");
    }

    static ApiCaller with(String token) {
        return new ApiCaller(token);
    }

    static String token(String staffId, Duration valid, ApiScope... scopes) {
        String made = Tokens.make();
        Act act = program();
        Act earlier = act.at(act.at().minus(Duration.ofDays(2)));
        records()
                .tokens()
                .add(
                        new ApiToken(
                                Tokens.id(made),
                                act.clinicId(),
                                staffId,
                                "test " + Tokens.id(made),
                                Set.of(scopes),
                                earlier.at(),
                                act.userId(),
                                act.at().plus(valid),
                                Optional.empty(),
                                Optional.empty()),
                        Tokens.digest(made),
                        earlier);
        return made;
    }

    String tokenId() {
        return Tokens.id(token);
    }

    String token() {
        return token;
    }

    HttpResponse<byte[]> get(String path, String... headers) {
        return send("GET", path, new byte[0], headers);
    }

    HttpResponse<byte[]> send(String method, String path, String body, String... headers) {
        return send(method, path, body.getBytes(StandardCharsets.UTF_8), headers);
    }

    HttpResponse<byte[]> send(String method, String path, byte[] body, String... headers) {
        var request = HttpRequest.newBuilder(URI.create(server().address() + path))
                .method(
                        method,
                        body.length == 0
                                ? HttpRequest.BodyPublishers.noBody()
                                : HttpRequest.BodyPublishers.ofByteArray(body));
        if (!token.isEmpty()) {
            request.header("Authorization", "Bearer " + token);
        }
        if (headers.length > 0) {
            request.headers(headers);
        }
        try {
            HttpResponse<byte[]> answer = client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
            assertThat(answer.headers().allValues("Set-Cookie")).isEmpty();
            Description.bundled().check(method, path, answer);
            return answer;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    static JsonNode json(HttpResponse<byte[]> answer) {
        return JsonMapper.shared().readTree(answer.body());
    }

    static String text(HttpResponse<byte[]> answer) {
        return new String(answer.body(), StandardCharsets.UTF_8);
    }

    static String header(HttpResponse<?> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    /** One of the invented people of the examples, as a case file. */
    static String example(String name) {
        try (var in = Objects.requireNonNull(
                TestServer.class.getResourceAsStream("/slipway/web/demo/cases/" + name + ".yaml"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file of a document of the project. */
    static Path projectFile(String name) {
        return List.of(Path.of("..", name), Path.of(name)).stream()
                .filter(Files::exists)
                .findFirst()
                .orElseThrow();
    }
}
