package slipway.web.patient;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Properties;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.access.LinkPurpose;
import slipway.exercises.exercise.Language;
import slipway.exercises.readability.ReadingLevel;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;
import slipway.web.episode.Cases;

class PatientPagesTest {
    private static final TestServer SERVER = TestServer.ofItsOwn();

    private final Visitor therapist = SERVER.signedIn("therapist");

    /** The path of a new code. */
    private String code(String episodeId) {
        return therapist
                .post("/episodes/" + episodeId + "/links")
                .body()
                .replaceAll("(?s).*<code>https?://[^/]+(/p/[^<]+)</code>.*", "$1");
    }

    private static Visitor opened(String code) {
        Visitor person = SERVER.visitor();
        person.get(code);
        assertThat(TestServer.location(person.post(code))).isEqualTo("/home");
        person.get("/home");
        return person;
    }

    private static String[] report(String id, String exercise, String... more) {
        var fields = new ArrayList<>(List.of("id", id, "exercise", exercise, "done", "all", "planned", "6"));
        fields.addAll(List.of(more));
        return fields.toArray(String[]::new);
    }

    private static String exercise(Visitor person) {
        return person.get("/home").body().replaceAll("(?s).*(?:<option|name=\"exercise\") value=\"([^\"]+)\".*", "$1");
    }

    @Test
    void fromTheCodeToTheAnswerAndSentTwiceItCountsOnce() {
        String id = Charts.demoEpisode(SERVER, "Alma");
        Visitor person = opened(code(id));
        int before = Charts.open(SERVER, id).checkIns().list().size();
        String[] report = report(
                UUID.randomUUID().toString(),
                exercise(person),
                "before",
                "2",
                "worst",
                "3",
                "kind",
                "tingling",
                "settle",
                "2",
                "none",
                "yes");
        HttpResponse<String> answer = person.post("/home/report", report);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("Your answer");
        assertThat(person.post("/home/report", report).statusCode()).isEqualTo(200);
        assertThat(Charts.open(SERVER, id).checkIns().list()).hasSize(before + 1);
    }

    @Test
    void anEmergencySignGetsTheNumberRaisesAnAlertAndLocksTheGuide() {
        String id = Charts.demoEpisode(SERVER, "Rosario");
        Visitor person = opened(code(id));
        HttpResponse<String> answer =
                person.post("/home/report", report(UUID.randomUUID().toString(), exercise(person), "emergency", "yes"));
        assertThat(answer.body()).contains("tel:911").contains("lang=\"es\"");
        assertThat(Charts.open(SERVER, id).checkIns().alerts()).isNotEmpty();
        assertThat(person.get("/home").body()).contains("en pausa").doesNotContain("href=\"/home/guide\"");
        assertThat(TestServer.location(person.get("/home/guide.html"))).isEqualTo("/home");
    }

    @Test
    void aSignWinsOverNoneOfTheseAndOneReleaseDoesNotFreeAnotherAlert() {
        String id = Charts.demoEpisode(SERVER, "Tomas");
        String code = code(release(id));
        Visitor person = opened(code);
        String exercise = exercise(person);
        person.post("/home/report", report(UUID.randomUUID().toString(), exercise, "weak", "yes", "none", "yes"));
        person.post("/home/report", report(UUID.randomUUID().toString(), exercise, "numb", "yes"));
        assertThat(Charts.open(SERVER, id).checkIns().alerts()).hasSize(2);
        String first = Charts.open(SERVER, id).checkIns().alerts().get(0).id();
        therapist.post("/episodes/" + id + "/alerts/" + first, "done", "seen, all well", "goOn", "yes");
        assertThat(isLocked(person)).isTrue();
        String second = Charts.open(SERVER, id).checkIns().alerts().get(1).id();
        therapist.post("/episodes/" + id + "/alerts/" + second, "done", "seen, all well", "goOn", "yes");
        assertThat(isLocked(person)).isFalse();
    }

    private static boolean isLocked(Visitor person) {
        return person.get("/home/state").body().contains("\"locked\":true");
    }

    @Test
    void anExerciseThatRestsIsSaidToRestUntilTheTherapistLetsItGoOn() {
        String id = Charts.demoEpisode(SERVER, "Alma");
        Visitor person = opened(code(id));
        List<String> names = person.get("/home")
                .body()
                .lines()
                .filter(line -> line.contains("<option "))
                .toList();
        for (int i = 0; i < 30 && !person.get("/home").body().contains("Do not do this one"); i++) {
            person.post("/home/report", flare(exercise(person)));
        }
        assertThat(names).isNotEmpty();
        assertThat(person.get("/home").body()).contains("Do not do this one");
        assertThat(person.get("/home/guide").body()).contains("Do not do this one");
        assertThat(therapist.get("/episodes/" + id + "/follow").body()).contains("Rests until you have looked");
        therapist.post("/episodes/" + id + "/go-on", "done", "looked at it, may go on");
        assertThat(person.get("/home").body()).doesNotContain("Do not do this one");
    }

    private static String[] flare(String exercise) {
        return report(
                UUID.randomUUID().toString(),
                exercise,
                "before",
                "1",
                "worst",
                "6",
                "kind",
                "tingling",
                "settle",
                "30",
                "none",
                "yes");
    }

    @Test
    void aFloodFromOneCodeIsSlowedAndOthersGoOn() {
        Visitor flood = opened(code(Charts.demoEpisode(SERVER, "Alma")));
        Visitor other = opened(code(Charts.demoEpisode(SERVER, "Bjarne")));
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
                flood.post("/home/report", report(UUID.randomUUID().toString(), "any", "emergency", "yes"));
        assertThat(answer.body()).contains("tel:911");
        assertThat(answer.headers().firstValue("X-Kept")).isEmpty();
    }

    /** RFC 5545, section 3.1: lines end with CR LF and have at most 75 octets; 3.6.1: UID and DTSTAMP must be there. */
    @Test
    void theReminderIsACalendarFileThatTellsNothing() {
        Visitor person = opened(code(Charts.demoEpisode(SERVER, "Alma")));
        HttpResponse<String> answer = person.get("/home/reminder.ics?at=07:15");
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("text/calendar");
        List<String> lines = List.of(answer.body().split("\r\n", -1));
        assertThat(answer.body().replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        assertThat(lines).allMatch(line -> line.getBytes(java.nio.charset.StandardCharsets.UTF_8).length <= 75);
        assertThat(lines).startsWith("BEGIN:VCALENDAR", "VERSION:2.0").contains("SUMMARY:Your reminder");
        assertThat(answer.body()).containsPattern("UID:.+").containsPattern("DTSTAMP:[0-9]{8}T[0-9]{6}Z");
        assertThat(answer.body()).containsPattern("DTSTART:[0-9]{8}T071500\r\n");
        assertThat(answer.body().toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("alma")
                .doesNotContain("exercise")
                .doesNotContain("nerve")
                .doesNotContain("clinic")
                .doesNotContain("http");
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
        String right = "/p/" + token(id, 1, true);
        Visitor person = SERVER.visitor();
        assertThat(person.get(right).body()).contains("What year were you born?");
        assertThat(person.post(right, "year", String.valueOf(year - 20)).body()).contains("not the year");
        assertThat(TestServer.location(person.post(right, "year", String.valueOf(year))))
                .isEqualTo("/home");
        String guessed = "/p/" + token(id, 1, true);
        Visitor finder = SERVER.visitor();
        for (int i = 0; i < 5; i++) {
            finder.post(guessed, "year", String.valueOf(1900 + i));
        }
        assertThat(finder.get(guessed).body()).contains("shut for a while");
        assertThat(finder.post(guessed, "year", String.valueOf(year)).body()).contains("shut for a while");
        // The other code of the same person is not shut by it.
        assertThat(person.get("/home").statusCode()).isEqualTo(200);
    }

    /** Gives the plan of a demo person who has none at home yet. */
    private String release(String id) {
        String plan = therapist.get("/episodes/" + id + "/plan").body();
        String digest = plan.replaceAll("(?s).*name=\"digest\" value=\"([^\"]+)\".*", "$1");
        therapist.post("/episodes/" + id + "/plan/accept", "digest", digest);
        String tries = therapist.get("/episodes/" + id + "/try").body();
        String exercise = tries.replaceAll("(?s).*?name=\"exercise\" value=\"([^\"]+)\".*", "$1");
        therapist.post(
                "/episodes/" + id + "/tries",
                "exercise",
                exercise,
                "repetitions",
                "5",
                "worst",
                "1",
                "settleMinutes",
                "1",
                "release",
                "yes");
        therapist.post("/episodes/" + id + "/release", "language", "en", "paper", "a4", "type", "normal");
        return id;
    }

    @Test
    void changedAnswersSentWithTheOldIdAreAReportOfTheirOwn() {
        String id = Charts.demoEpisode(SERVER, "Alma");
        Visitor person = opened(code(id));
        int before = Charts.open(SERVER, id).checkIns().list().size();
        String reportId = UUID.randomUUID().toString();
        String exercise = exercise(person);
        person.post(
                "/home/report",
                report(reportId, exercise, "before", "1", "worst", "1", "kind", "none", "settle", "0", "none", "yes"));
        HttpResponse<String> changed = person.post(
                "/home/report",
                report(
                        reportId,
                        exercise,
                        "before",
                        "1",
                        "worst",
                        "8",
                        "kind",
                        "pain",
                        "usualPain",
                        "yes",
                        "settle",
                        "120",
                        "none",
                        "yes"));
        assertThat(changed.statusCode()).isEqualTo(200);
        assertThat(Charts.open(SERVER, id).checkIns().list()).hasSize(before + 2);
    }

    @Test
    void whatIsMissingIsSaidAndNothingIsKept() {
        String id = Charts.demoEpisode(SERVER, "Alma");
        Visitor person = opened(code(id));
        int before = Charts.open(SERVER, id).checkIns().list().size();
        HttpResponse<String> answer =
                person.post("/home/report", report(UUID.randomUUID().toString(), exercise(person), "worst", "11"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("None of these").contains("how strong it was before");
        assertThat(Charts.open(SERVER, id).checkIns().list()).hasSize(before);
    }

    @Test
    void anUnknownAndARevokedCodeGetTheSameAnswerAndEndASession() {
        String id = Charts.demoEpisode(SERVER, "Alma");
        String code = code(id);
        Visitor person = opened(code);
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
        Visitor person = opened(code(Charts.demoEpisode(SERVER, "Alma")));
        assertThat(TestServer.location(person.get("/today"))).isEqualTo("/sign-in");
        assertThat(TestServer.location(person.get("/episodes/" + Charts.demoEpisode(SERVER, "Bjarne") + "/plan")))
                .isEqualTo("/sign-in");
        assertThat(TestServer.location(therapist.get("/home"))).isEqualTo("/p");
    }

    @Test
    void aCodeOpenedBesideASignInLeavesItAloneAndTheOtherWayRound() {
        Visitor both = SERVER.signedIn("therapist");
        String code = code(Charts.demoEpisode(SERVER, "Alma"));
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
        String code = code(Charts.demoEpisode(SERVER, "Alma"));
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
        Visitor person = opened(code(Charts.demoEpisode(SERVER, "Alma")));
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
        assertThat(opened("/p/" + token(id, released)).get("/home").body()).doesNotContain("Your plan is new");
        assertThat(opened("/p/" + token(id, released + 1)).get("/home").body()).contains("Your plan is new");
    }

    /** A code that was given with some version of the plan. */
    private static String token(String episodeId, int plan) {
        return token(episodeId, plan, false);
    }

    private static String token(String episodeId, int plan, boolean birthYear) {
        String token = UUID.randomUUID().toString();
        SERVER.records()
                .links()
                .add(
                        episodeId,
                        LinkPurpose.GUIDE,
                        OptionalInt.of(plan),
                        Cases.digest(token),
                        Instant.now().plus(Duration.ofDays(1)),
                        birthYear,
                        Charts.therapist(SERVER));
        return token;
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyTextIsEasyToRead(Language language) throws java.io.IOException {
        var texts = new Properties();
        try (var stream = Objects.requireNonNull(
                PatientViews.class.getResourceAsStream("messages_" + language.code() + ".properties"))) {
            texts.load(new java.io.InputStreamReader(stream, java.nio.charset.StandardCharsets.UTF_8));
        }
        List<String> sentences = texts.entrySet().stream()
                .filter(each -> !each.getKey().equals("reviewed"))
                .map(each -> String.valueOf(each.getValue()).replace("{0}", "555"))
                .filter(text -> text.contains(" ") && text.matches(".*[.?].*"))
                .sorted()
                .toList();
        assertThat(sentences).hasSizeGreaterThan(15);
        assertThat(ReadingLevel.of(language, sentences)).matches(ReadingLevel::easyEnough);
    }
}
