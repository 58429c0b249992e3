package slipway.web.patient;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

class PatientPagesTest {
    private static final TestServer SERVER = TestServer.ofItsOwn();

    private final HomeCodes codes = new HomeCodes(SERVER);
    private final Visitor therapist = SERVER.signedIn("therapist");

    @Test
    void fromTheCodeToTheAnswerAndSentTwiceItCountsOnce() {
        String id = Charts.demoEpisode(SERVER, "Alma");
        Visitor person = codes.opened(codes.code(id));
        int before = Charts.open(SERVER, id).checkIns().list().size();
        String[] report = HomeCodes.report(
                UUID.randomUUID().toString(),
                HomeCodes.exercise(person),
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
        Visitor person = codes.opened(codes.code(id));
        HttpResponse<String> answer = person.post(
                "/home/report",
                HomeCodes.report(UUID.randomUUID().toString(), HomeCodes.exercise(person), "emergency", "yes"));
        assertThat(answer.body()).contains("tel:911").contains("lang=\"es\"");
        assertThat(Charts.open(SERVER, id).checkIns().alerts()).isNotEmpty();
        assertThat(person.get("/home").body()).contains("en pausa").doesNotContain("href=\"/home/guide\"");
        assertThat(TestServer.location(person.get("/home/guide.html"))).isEqualTo("/home");
    }

    @Test
    void aSignWinsOverNoneOfTheseAndOneReleaseDoesNotFreeAnotherAlert() {
        String id = Charts.demoEpisode(SERVER, "Tomas");
        String code = codes.code(release(id));
        Visitor person = codes.opened(code);
        String exercise = HomeCodes.exercise(person);
        person.post(
                "/home/report", HomeCodes.report(UUID.randomUUID().toString(), exercise, "weak", "yes", "none", "yes"));
        person.post("/home/report", HomeCodes.report(UUID.randomUUID().toString(), exercise, "numb", "yes"));
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
        Visitor person = codes.opened(codes.code(id));
        List<String> names = person.get("/home")
                .body()
                .lines()
                .filter(line -> line.contains("<option "))
                .toList();
        for (int i = 0; i < 30 && !person.get("/home").body().contains("Do not do this one"); i++) {
            person.post("/home/report", flare(HomeCodes.exercise(person)));
        }
        assertThat(names).isNotEmpty();
        assertThat(person.get("/home").body()).contains("Do not do this one");
        assertThat(person.get("/home/guide").body()).contains("Do not do this one");
        assertThat(therapist.get("/episodes/" + id + "/follow").body()).contains("Rests until you have looked");
        therapist.post("/episodes/" + id + "/go-on", "done", "looked at it, may go on");
        assertThat(person.get("/home").body()).doesNotContain("Do not do this one");
    }

    private static String[] flare(String exercise) {
        return HomeCodes.report(
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

    /** RFC 5545, section 3.1: lines end with CR LF and have at most 75 octets; 3.6.1: UID and DTSTAMP must be there. */
    @Test
    void theReminderIsACalendarFileThatTellsNothing() {
        Visitor person = codes.opened(codes.code(Charts.demoEpisode(SERVER, "Alma")));
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
        Visitor person = codes.opened(codes.code(id));
        int before = Charts.open(SERVER, id).checkIns().list().size();
        String reportId = UUID.randomUUID().toString();
        String exercise = HomeCodes.exercise(person);
        person.post(
                "/home/report",
                HomeCodes.report(
                        reportId, exercise, "before", "1", "worst", "1", "kind", "none", "settle", "0", "none", "yes"));
        HttpResponse<String> changed = person.post(
                "/home/report",
                HomeCodes.report(
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
        Visitor person = codes.opened(codes.code(id));
        int before = Charts.open(SERVER, id).checkIns().list().size();
        HttpResponse<String> answer = person.post(
                "/home/report",
                HomeCodes.report(UUID.randomUUID().toString(), HomeCodes.exercise(person), "worst", "11"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("None of these").contains("how strong it was before");
        assertThat(Charts.open(SERVER, id).checkIns().list()).hasSize(before);
    }
}
