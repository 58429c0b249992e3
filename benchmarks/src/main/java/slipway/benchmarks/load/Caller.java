package slipway.benchmarks.load;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A browser whose answers are timed. */
final class Caller {
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");
    private static final Pattern TITLE = Pattern.compile("<title>([^<]*)");
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private final HttpClient client;
    private final String address;
    private final Times times;
    private String token = "";

    Caller(String address, Times times) {
        this.address = address;
        this.times = times;
        this.client = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    }

    String get(String what, String path) throws IOException, InterruptedException {
        HttpResponse<String> answer =
                send(what, HttpRequest.newBuilder(uri(path)).GET(), 200);
        Matcher found = TOKEN.matcher(answer.body());
        if (found.find()) {
            token = found.group(1);
        }
        return answer.body();
    }

    /** A form of names and values in turn; gives where the answer points to, or its text. */
    String post(String what, String path, int expected, String... fields) throws IOException, InterruptedException {
        var body = new StringBuilder("_csrf=" + URLEncoder.encode(token, StandardCharsets.UTF_8));
        for (int i = 0; i < fields.length; i += 2) {
            body.append('&').append(fields[i]).append('=');
            body.append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        HttpResponse<String> answer = send(
                what,
                HttpRequest.newBuilder(uri(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body.toString())),
                expected);
        return answer.headers().firstValue("Location").orElse(answer.body());
    }

    private HttpResponse<String> send(String what, HttpRequest.Builder request, int expected)
            throws IOException, InterruptedException {
        long begin = System.nanoTime();
        HttpResponse<String> answer =
                client.send(request.timeout(PATIENCE).build(), HttpResponse.BodyHandlers.ofString());
        times.add(what, (System.nanoTime() - begin) / 1e6, answer.statusCode() == expected);
        if (answer.statusCode() != expected) {
            System.err.println(what + ": " + answer.statusCode() + " "
                    + TITLE.matcher(answer.body())
                            .results()
                            .map(found -> found.group(1))
                            .findFirst()
                            .orElse(""));
        }
        return answer;
    }

    private URI uri(String path) {
        return URI.create(address + path);
    }
}
