package slipway.web.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.chart.Chart;
import slipway.care.record.person.Person;
import slipway.mechanics.body.Side;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

/** What nobody should send gets a clear answer, the right status, and changes nothing. */
class BadInputTest {
    private static final TestServer SERVER = TestServer.shared();

    private final Visitor therapist = SERVER.signedIn("therapist");

    @Test
    void everyMistakeIsNamedAndWhatWasTypedIsKept() {
        HttpResponse<String> answer = therapist.post(
                "/people",
                "name",
                "",
                "born",
                "2999-01-01",
                "stature",
                "9 feet",
                "mass",
                "NaN",
                "language",
                "xx",
                "phone",
                "<b>",
                "email",
                "no at sign");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("2999-01-01").contains("9 feet").contains("no at sign");
        for (String field : new String[] {"name", "born", "stature", "mass", "language", "phone", "email"}) {
            assertThat(answer.body()).contains("href=\"#" + field + "\"");
        }
        assertThat(answer.body()).doesNotContain("value=\"<b>\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\u0645\u0631\u064a\u0645 \u062d\u062f\u0627\u062f",
                "Zo\u00eb \ud83d\udc69\ud83c\udffe\u200d\ud83e\uddb1",
                "O'Brien \"Bob\" & sons",
                "'; DROP TABLE person; --",
                "${7*7} {{7*7}} #{7*7}"
            })
    void namesOfAnyScriptAreKeptAsTheyAreAndNeverRun(String name) {
        HttpResponse<String> added = therapist.post("/people", "name", name, "language", "en");
        assertThat(added.statusCode()).isEqualTo(302);
        String page = therapist.get(TestServer.location(added)).body();
        assertThat(page).doesNotContain("<script>alert").doesNotContain("49 ");
        String id = TestServer.location(added).replaceAll(".*/", "");
        Person kept =
                SERVER.records().people().find(id, Charts.therapist(SERVER)).orElseThrow();
        assertThat(kept.details().name()).isEqualTo(name);
    }

    @Test
    void aNameBeyondItsLengthIsRefusedWithTheLimit() {
        HttpResponse<String> answer = therapist.post("/people", "name", "x".repeat(200), "language", "en");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("80").contains("x".repeat(200));
    }

    @Test
    void unknownIdsAndThoseOfAnotherClinicGetTheSameAnswer() {
        var foreign = new Act("test", Role.PROGRAM, UUID.randomUUID().toString(), Instant.now());
        SERVER.records().clinics().add("Elsewhere", "therapy", "", "112", false, foreign);
        Person person = SERVER.records().people().add(Charts.details("Foreign Person"), foreign);
        Chart chart = SERVER.records().charts().begin(person.id(), Side.LEFT, "test", Map.of(), foreign);
        String episode = chart.episode().id();
        for (String path :
                new String[] {"/people/%s", "/episodes/%s", "/episodes/%s/plan", "/episodes/%s/referral.pdf"}) {
            String theirs = path.startsWith("/people") ? person.id() : episode;
            HttpResponse<String> other = therapist.get(path.formatted(theirs));
            HttpResponse<String> unknown =
                    therapist.get(path.formatted(UUID.randomUUID().toString()));
            assertThat(other.statusCode()).as(path).isEqualTo(404);
            assertThat(TestServer.plain(other)).as(path).isEqualTo(TestServer.plain(unknown));
            assertThat(other.body()).doesNotContain("Foreign Person");
        }
        HttpResponse<String> write =
                therapist.post("/episodes/" + episode + "/sections/history", "version", "0", "history.onset", "x");
        assertThat(write.statusCode()).isEqualTo(404);
    }

    @Test
    void theSecondOfTwoEditorsIsToldAndLosesNothing() {
        Person person = SERVER.records().people().add(Charts.details("Twice Edited"), Charts.therapist(SERVER));
        Chart chart = SERVER.records()
                .charts()
                .begin(person.id(), Side.LEFT, Charts.therapist(SERVER).userId(), Map.of(), Charts.therapist(SERVER));
        String path = "/episodes/" + chart.episode().id() + "/sections/history";
        assertThat(therapist
                        .post(path, "version", "0", "history.onset", "first story")
                        .statusCode())
                .isEqualTo(302);
        HttpResponse<String> second = therapist.post(path, "version", "0", "history.onset", "second story");
        assertThat(second.statusCode()).isEqualTo(409);
        assertThat(second.body()).contains("first story").contains("second story");
    }

    @Test
    void oversizedBodiesAndWrongContentAreRefused() {
        HttpResponse<String> large = therapist.post("/people", "name", "x".repeat(900_000), "language", "en");
        assertThat(large.statusCode()).isBetween(400, 422);
        HttpResponse<String> json = therapist.send(HttpRequest.newBuilder(URI.create(SERVER.address() + "/people"))
                .header("Content-Type", "application/json")
                .header("X-CSRF-TOKEN", therapist.token())
                .POST(HttpRequest.BodyPublishers.ofString("{\"name\":\"x\"}")));
        assertThat(json.statusCode()).isBetween(400, 422);
        assertThat(therapist.get("/people/new").statusCode()).isEqualTo(200);
    }

    @Test
    void aVersionThatIsNoNumberIsTheSendersMistake() {
        HttpResponse<String> answer =
                therapist.post("/episodes/none/sections/history", "version", "one", "history.onset", "x");
        assertThat(answer.statusCode()).isEqualTo(400);
    }
}
