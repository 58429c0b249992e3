package slipway.app.nodes;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.app.upkeep.Upkeep;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.person.PersonDetails;
import slipway.care.record.trail.TrailForm;
import slipway.mechanics.body.Side;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.store.work.WorkNote;
import slipway.store.work.Worker;
import slipway.web.WebOptions;
import slipway.web.WebServer;

/** One server through what goes wrong around it: its database leaves and comes back, and clients misbehave. */
class ServerFaultsTest {
    private static final String CODE = "a-code-of-this-test";

    @TempDir
    private Path folder = Path.of("");

    private EmbeddedPostgres postgres(int port) throws IOException {
        var builder = EmbeddedPostgres.builder()
                .setDataDirectory(folder.resolve("data"))
                .setCleanDataDirectory(false);
        return (port == 0 ? builder : builder.setPort(port)).start();
    }

    @Test
    void theDatabaseLeavesAndComesBackAndClientsMisbehave() throws Exception {
        EmbeddedPostgres postgres = postgres(0);
        int port = postgres.getPort();
        String url = postgres.getJdbcUrl("postgres", "postgres").split("\\?", 2)[0];
        try (Store store = Store.open(StoreSettings.postgres(url, "postgres", "postgres"))) {
            var options = new WebOptions(0, "127.0.0.1", folder, Optional.empty(), Optional.empty(), true);
            try (WebServer server = WebServer.start(
                    options, store, Clock.systemUTC(), Map.of("server.tomcat.connection-timeout", "1s"))) {
                String address = "http://127.0.0.1:" + server.port();
                var browser = new Browser();
                NodesTest.fill(store, server);
                browser.signIn(address, "therapist", NodesTest.PASSWORD);
                assertThat(browser.get(address, "/today").statusCode()).isEqualTo(200);

                String episode = somebodyNew(store);
                var phone = new Browser();
                phone.get(address, "/p/" + CODE);
                phone.post(address, "/p/" + CODE);
                phone.get(address, "/before/1");

                postgres.close();
                dangerIsToldToNobody(phone, address);
                for (String path : List.of("/today", "/p")) {
                    HttpResponse<String> away = browser.get(address, path);
                    assertThat(away.statusCode()).as(path).isEqualTo(503);
                    assertThat(away.body()).contains("cannot be reached").contains("emergency number");
                    assertThat(away.headers().firstValue("Retry-After")).contains("30");
                }
                assertThat(new Browser().get(address, "/health").statusCode()).isEqualTo(503);

                postgres = postgres(port);
                assertThat(new Browser().get(address, "/health").statusCode()).isEqualTo(200);
                // Still signed in: the session was in the database.
                assertThat(browser.get(address, "/today").statusCode()).isEqualTo(200);
                dangerIsToldOnce(phone, address, store, episode);

                try (Worker upkeep = Upkeep.of(store, server, folder, Optional.empty())) {
                    upkeep.round();
                }
                assertThat(store.work().notes())
                        .extracting(WorkNote::name)
                        .containsExactly("alerts", "caseload", "keeping", "sweep");
                assertThat(store.work().notes()).allMatch(note -> note.failures() == 0);
                cutOff(server.port(), store);
                sendsNothing(server.port());
            }
        } finally {
            postgres.close();
        }
    }

    private static Act therapist(Store store) {
        StaffAccount account =
                store.records().staff().credentials("therapist").orElseThrow().account();
        return new Act(account.id(), Role.THERAPIST, account.clinicId(), Instant.now());
    }

    /** Gives the episode of a person who has got a code for the questions before the first visit. */
    private static String somebodyNew(Store store) {
        Act act = therapist(store);
        String person = store.records()
                .people()
                .add(PersonDetails.invented("Ines Palo"), act)
                .id();
        String episode = store.records()
                .charts()
                .begin(person, Side.LEFT, act.userId(), Map.of(), act)
                .episode()
                .id();
        Instant tomorrow = act.at().plus(Duration.ofDays(1));
        store.records()
                .links()
                .add(episode, LinkPurpose.INTAKE, OptionalInt.empty(), TrailForm.sha256(CODE), tomorrow, false, act);
        return episode;
    }

    /** Somebody who tells a sign of danger must not take it that the clinic knows. */
    private static void dangerIsToldToNobody(Browser phone, String address) throws Exception {
        HttpResponse<String> away = phone.post(address, "/before/1", "saddleNumbness", "yes");
        assertThat(away.statusCode()).isEqualTo(503);
        assertThat(away.body())
                .contains("probably not been stored", "probablemente no se ha guardado")
                .contains("call your local emergency number", "llame al número local de emergencias");
    }

    private static void dangerIsToldOnce(Browser phone, String address, Store store, String episode) throws Exception {
        assertThat(alerts(store, episode)).isZero();
        HttpResponse<String> sent = phone.post(address, "/before/1", "saddleNumbness", "yes");
        assertThat(Browser.location(sent)).startsWith("/before/now");
        assertThat(alerts(store, episode)).isEqualTo(1);
    }

    private static int alerts(Store store, String episode) {
        return store.records()
                .charts()
                .open(episode, therapist(store))
                .chartIfOpen()
                .orElseThrow()
                .checkIns()
                .alerts()
                .size();
    }

    /** Half a form must not count as a whole one, though what came of it would be one. */
    private static void cutOff(int port, Store store) throws IOException, InterruptedException {
        int entries = (int) store.records().trail().verify().entries();
        HttpResponse<String> page = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/sign-in"))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        String cookie = page.headers().firstValue("Set-Cookie").orElseThrow().replaceAll(";.*", "");
        String token = page.body().replaceAll("(?s).*name=\"_csrf\" value=\"([^\"]+)\".*", "$1");
        String form = "_csrf=" + URLEncoder.encode(token, StandardCharsets.UTF_8) + "&login=lead&password=wrong";
        assertThat(post(port, cookie, form, form.length() + 20)).doesNotContain(" 200 ");
        assertThat(store.records().trail().verify().entries()).isEqualTo(entries);
        // The same as a whole is looked at.
        assertThat(post(port, cookie, form, form.length())).contains(" 200 ");
        assertThat(store.records().trail().verify().entries()).isEqualTo(entries + 1);
    }

    private static String post(int port, String cookie, String form, int said) throws IOException {
        try (var socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(20_000);
            String request = "POST /sign-in HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nCookie: " + cookie
                    + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: " + said + "\r\n\r\n"
                    + form;
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            socket.shutdownOutput();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static void sendsNothing(int port) throws IOException {
        try (var socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write("GET /sign-in HTTP/1.1\r\n".getBytes(StandardCharsets.US_ASCII));
            // The end comes from the server: the test would fail by its own time otherwise.
            assertThat(socket.getInputStream().readAllBytes()).hasSizeLessThan(2_000);
        }
    }
}
