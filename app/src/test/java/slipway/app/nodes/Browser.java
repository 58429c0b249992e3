package slipway.app.nodes;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A browser that may be sent to any of several servers, as by a proxy in front of them. */
final class Browser {
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");
    private static final Duration PATIENCE = Duration.ofSeconds(90);

    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .connectTimeout(Duration.ofSeconds(5))
            .build();
    private String token = "";

    HttpResponse<String> get(String server, String path) throws IOException, InterruptedException {
        HttpResponse<String> answer =
                send(server, path, HttpRequest.newBuilder().GET());
        Matcher found = TOKEN.matcher(answer.body());
        if (found.find()) {
            token = found.group(1);
        }
        return answer;
    }

    /** A form, as names and values in turn, with the token of the last page. */
    HttpResponse<String> post(String server, String path, String... fields) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(Arrays.asList(fields));
        all.addAll(List.of("_csrf", token));
        var body = new StringBuilder();
        for (int i = 0; i < all.size(); i += 2) {
            body.append(i == 0 ? "" : "&").append(all.get(i)).append('=');
            body.append(URLEncoder.encode(all.get(i + 1), StandardCharsets.UTF_8));
        }
        return send(
                server,
                path,
                HttpRequest.newBuilder()
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body.toString())));
    }

    private HttpResponse<String> send(String server, String path, HttpRequest.Builder request)
            throws IOException, InterruptedException {
        return client.send(
                request.uri(URI.create(server + path)).timeout(PATIENCE).build(), HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> signIn(String server, String login, String password) throws IOException, InterruptedException {
        get(server, "/sign-in");
        return post(server, "/sign-in", "login", login, "password", password);
    }

    /** Goes in by the code of a person at home. */
    void enter(String server, String code) throws IOException, InterruptedException {
        get(server, "/p/" + code);
        post(server, "/p/" + code);
        get(server, "/home");
    }

    static String location(HttpResponse<?> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }
}
