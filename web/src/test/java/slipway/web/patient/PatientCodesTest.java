package slipway.web.patient;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

class PatientCodesTest {
    private static final TestServer SERVER = TestServer.ofItsOwn();

    private final HomeCodes codes = new HomeCodes(SERVER);
    private final Visitor therapist = SERVER.signedIn("therapist");

    @Test
    void aFloodFromOneCodeIsSlowedAndOthersGoOn() {
        Visitor flood = codes.opened(codes.code(Charts.demoEpisode(SERVER, "Alma")));
        Visitor other = codes.opened(codes.code(Charts.demoEpisode(SERVER, "Bjarne")));
        HttpResponse<String> last = flood.get("/home/state");
        for (int i = 0; i < 400 && last.statusCode() == 200; i++) {
            last = flood.get("/home/state");
        }
        assertThat(last.statusCode()).isEqualTo(429);
        assertThat(last.headers().firstValue("Retry-After")).isPresent();
        assertThat(last.body()).contains("Call 911 now.");
        assertThat(other.get("/home").statusCode()).isEqualTo(200);
        // Danger is answered even then; kept it is when the phone sends it again.
        HttpResponse<String> answer =
                flood.post("/home/report", HomeCodes.report(UUID.randomUUID().toString(), "any", "emergency", "yes"));
        assertThat(answer.body()).contains("tel:911");
        assertThat(answer.headers().firstValue("X-Kept")).isEmpty();
    }

    @Test
    void wrongYearsOfBirthShutACodeAndTheRightOneOpensIt() {
        String id = Charts.demoEpisode(SERVER, "Bjarne");
        int year = LocalDate.now(ZoneId.systemDefault()).getYear()
                - (int) Charts.open(SERVER, id)
                        .person()
                        .details()
                        .age()
                        .orElseThrow()
                        .yearsOn(LocalDate.now(ZoneId.systemDefault()));
        String right = "/p/" + codes.token(id, 1, true);
        Visitor person = SERVER.visitor();
        assertThat(person.get(right).body()).contains("What year were you born?");
        assertThat(person.post(right, "year", String.valueOf(year - 20)).body()).contains("not the year");
        assertThat(TestServer.location(person.post(right, "year", String.valueOf(year))))
                .isEqualTo("/home");
        String guessed = "/p/" + codes.token(id, 1, true);
        Visitor finder = SERVER.visitor();
        for (int i = 0; i < 5; i++) {
            finder.post(guessed, "year", String.valueOf(1900 + i));
        }
        assertThat(finder.get(guessed).body()).contains("shut for a while");
        assertThat(finder.post(guessed, "year", String.valueOf(year)).body()).contains("shut for a while");
        // The other code of the same person is not shut by it.
        assertThat(person.get("/home").statusCode()).isEqualTo(200);
    }

    @Test
    void anUnknownAndARevokedCodeGetTheSameAnswerAndEndASession() {
        String id = Charts.demoEpisode(SERVER, "Alma");
        String code = codes.code(id);
        Visitor person = codes.opened(code);
        String page = therapist.get("/episodes/" + id + "/follow").body();
        String revoke = page.replaceAll("(?s).*?action=\"(/episodes/[^\"]+/links/[^\"]+/revoke)\".*", "$1");
        therapist.post(revoke);
        assertThat(TestServer.location(person.get("/home"))).isEqualTo("/p");
        assertThat(TestServer.location(SERVER.visitor().get(code))).isEqualTo("/p");
        assertThat(TestServer.location(SERVER.visitor().get("/p/unknown"))).isEqualTo("/p");
        assertThat(SERVER.visitor().get("/p").body()).contains("Ask your clinic");
    }

    @Test
    void aCodeOpensNothingOfTheStaffAndNoOtherPerson() {
        Visitor person = codes.opened(codes.code(Charts.demoEpisode(SERVER, "Alma")));
        assertThat(TestServer.location(person.get("/today"))).isEqualTo("/sign-in");
        assertThat(TestServer.location(person.get("/episodes/" + Charts.demoEpisode(SERVER, "Bjarne") + "/plan")))
                .isEqualTo("/sign-in");
        assertThat(TestServer.location(therapist.get("/home"))).isEqualTo("/p");
    }

    @Test
    void aCodeOpenedBesideASignInLeavesItAloneAndTheOtherWayRound() {
        Visitor both = SERVER.signedIn("therapist");
        String code = codes.code(Charts.demoEpisode(SERVER, "Alma"));
        both.get(code);
        assertThat(TestServer.location(both.post(code))).isEqualTo("/home");
        assertThat(both.get("/home").statusCode()).isEqualTo(200);
        assertThat(both.get("/today").statusCode()).isEqualTo(200);
        both.get("/account");
        both.post("/sign-out");
        assertThat(TestServer.location(both.get("/today"))).isEqualTo("/sign-in");
        assertThat(both.get("/home").statusCode()).isEqualTo(200);
    }

    @Test
    void theCookieIsForThePatientsPagesOutOfReachOfScriptsAndCannotBeMade() {
        String code = codes.code(Charts.demoEpisode(SERVER, "Alma"));
        Visitor person = SERVER.visitor();
        person.get(code);
        String cookie = person.post(code).headers().firstValue("Set-Cookie").orElse("");
        assertThat(cookie)
                .startsWith("slipway-home=")
                .contains("Path=/home")
                .contains("HttpOnly")
                .contains("SameSite=Lax");
        String value = cookie.replaceAll(";.*", "");
        assertThat(withCookie(value).statusCode()).isEqualTo(200);
        String last = value.endsWith("A") ? "B" : "A";
        assertThat(TestServer.location(withCookie(value.substring(0, value.length() - 1) + last)))
                .isEqualTo("/p");
        assertThat(TestServer.location(withCookie(value.replaceAll("\\.[^.]*$", "."))))
                .isEqualTo("/p");
    }

    private static HttpResponse<String> withCookie(String cookie) {
        return SERVER.visitor()
                .send(java.net.http.HttpRequest.newBuilder(java.net.URI.create(SERVER.address() + "/home"))
                        .header("Cookie", cookie)
                        .GET());
    }

    @Test
    void aFormOfAnotherSiteIsRefused() {
        Visitor person = codes.opened(codes.code(Charts.demoEpisode(SERVER, "Alma")));
        int before = Charts.open(SERVER, Charts.demoEpisode(SERVER, "Alma"))
                .checkIns()
                .list()
                .size();
        assertThat(TestServer.location(person.postBare("/home/report", "emergency", "yes")))
                .isEqualTo("/p");
        assertThat(Charts.open(SERVER, Charts.demoEpisode(SERVER, "Alma"))
                        .checkIns()
                        .list())
                .hasSize(before);
    }

    @Test
    void aCodeOfAnOlderPlanOpensTheOneThatWasReleasedLastAndSaysSo() {
        String id = Charts.demoEpisode(SERVER, "Alma");
        int released = Charts.open(SERVER, id).plans().released().orElseThrow().number();
        assertThat(codes.opened("/p/" + codes.token(id, released)).get("/home").body())
                .doesNotContain("Your plan is new");
        assertThat(codes.opened("/p/" + codes.token(id, released + 1))
                        .get("/home")
                        .body())
                .contains("Your plan is new");
    }
}
