package slipway.web.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Decision;
import slipway.care.record.chart.Verdict;
import slipway.care.record.content.Section;
import slipway.care.record.follow.Alert;
import slipway.care.record.trail.Chain;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;
import slipway.web.told.Question;
import slipway.web.told.Questions;

class IntakePagesTest {
    private static final TestServer SERVER = TestServer.ofItsOwn();

    private final IntakeCodes codes = new IntakeCodes(SERVER);
    private final Visitor therapist = codes.therapist();

    @Test
    void whatIsToldStandsBesideTheRecordUntilTheTherapistTakesIt() {
        String id = codes.episode("Ines Palo");
        Visitor person = codes.opened(codes.code(id));
        person.post("/before/1", "saddleNumbness", "no", "bilateralLegPain", "unknown");
        person.post("/before/7", "sinceCount", "3", "sinceUnit", "weeks", "beganText", "lifting a <b>box</b> 😀");
        person.post("/before/9", "settleMinutes", "30");
        assertThat(TestServer.location(person.post("/before/12", "drugs", "none", "go", "done")))
                .isEqualTo("/before");
        assertThat(person.get("/before").body()).contains("Thank you");

        Chart chart = Charts.open(SERVER, id);
        assertThat(chart.section(Section.HISTORY).isEmpty()).isTrue();
        assertThat(chart.section(Section.SCREENING).isEmpty()).isTrue();
        String history = therapist.get("/episodes/" + id + "/history").body();
        assertThat(history)
                .contains("Told by the person on")
                .contains("lifting a &lt;b&gt;box&lt;/b&gt; 😀")
                .doesNotContain("<b>box");
        assertThat(SERVER.records().caseload().today(200, Charts.therapist(SERVER)))
                .filteredOn(row -> row.episodeId().equals(id))
                .allMatch(row -> row.toldAt().isPresent());

        therapist.post(
                "/episodes/" + id + "/sections/history",
                "version",
                "0",
                "history.work",
                "baker",
                "take",
                "history.onset");
        var content = Charts.content(SERVER, id, Section.HISTORY).path("history");
        assertThat(content.path("onset").asString()).isEqualTo("lifting a <b>box</b> 😀");
        // What was typed beside it is saved, and nothing else that was told.
        assertThat(content.path("work").asString()).isEqualTo("baker");
        assertThat(content.has("durationWeeks")).isFalse();
        therapist.post("/episodes/" + id + "/sections/screening", "version", "0", "take", "*");
        var screening = Charts.content(SERVER, id, Section.SCREENING).path("screening");
        assertThat(screening.path("saddleNumbness").asString()).isEqualTo("no");
        assertThat(screening.path("bilateralLegPain").asString()).isEqualTo("unknown");
        // Not answered is not "no".
        assertThat(screening.has("bladderBowelChange")).isFalse();
        therapist.post("/episodes/" + id + "/sections/tolerance", "version", "0", "take", "*");
        assertThat(Charts.content(SERVER, id, Section.TOLERANCE)
                        .path("irritability")
                        .path("settleMinutes")
                        .asInt())
                .isEqualTo(30);
        assertThat(Charts.open(SERVER, id).decisions().about("intake")).hasSize(3);
        // As it was told, it stays.
        assertThat(Charts.open(SERVER, id)
                        .intakes()
                        .list()
                        .get(0)
                        .answers()
                        .path("drugs")
                        .asString())
                .isEqualTo("none");
    }

    @Test
    void aYesRaisesOneAlertAtOnceAndStaysUnclearedForTheTherapist() {
        String id = codes.episode("Rui Sand");
        Visitor person = codes.opened(codes.code(id));
        HttpResponse<String> sent = person.post("/before/1", "saddleNumbness", "yes", "sexualChange", "no");
        assertThat(TestServer.location(sent)).startsWith("/before/now");
        assertThat(person.get("/before/now?from=1").body())
                .contains("tel:911")
                .contains("Your clinic got this at")
                .contains("newly numb");
        person.post("/before/1", "saddleNumbness", "yes");
        List<Alert> alerts = Charts.open(SERVER, id).checkIns().alerts();
        assertThat(alerts).hasSize(1);
        assertThat(alerts.get(0).kind()).isEqualTo("intake-emergency");
        assertThat(alerts.get(0).ownerId())
                .isEqualTo(Charts.open(SERVER, id).episode().therapistId());
        assertThat(therapist.get("/today").body()).contains("Told by phone before the first visit, yes to:");
        assertThat(therapist.get("/episodes/" + id + "/screen").body())
                .contains("has told signs of danger by phone")
                .contains("data-told");

        // Taken back by the person it is still said, and the end says what to do about what still stands.
        person.post("/before/1", "saddleNumbness", "no");
        person.post("/before/12", "go", "done");
        assertThat(therapist.get("/episodes/" + id + "/screen").body()).contains("Later taken back");
        assertThat(Charts.open(SERVER, id).section(Section.SCREENING).isEmpty()).isTrue();
        assertThat(Charts.open(SERVER, id).checkIns().alerts().get(0).acknowledged())
                .isEmpty();
        therapist.get("/episodes/" + id + "/screen");
        therapist.post("/episodes/" + id + "/sections/screening", "version", "0", "screening.saddleNumbness", "no");
        assertThat(therapist.get("/episodes/" + id + "/screen").body())
                .contains("The screening says other than what was told");
    }

    /** The reason is asked for, kept with what was told and what was chosen, and stays in sight. */
    @Test
    void sayingOtherThanWhatWasToldNeedsAReason() {
        String id = codes.episode("Nia Brook");
        Visitor person = codes.opened(codes.code(id));
        person.post("/before/7", "beganText", "lifting a box");
        person.post("/before/9", "settleMinutes", "30");
        person.post("/before/12", "drugs", "none", "go", "done");
        String history = "/episodes/" + id + "/sections/history";
        therapist.get("/episodes/" + id + "/history");

        HttpResponse<String> asked = therapist.post(history, "version", "0", "history.drugs", "<aspirin>");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains("Say why").contains("&lt;aspirin");
        assertThat(Charts.open(SERVER, id).section(Section.HISTORY).isEmpty()).isTrue();
        HttpResponse<String> tooLong = therapist.post(
                history, "version", "0", "history.drugs", "aspirin", "why.history.drugs", "x".repeat(401));
        assertThat(tooLong.statusCode()).isEqualTo(422);
        assertThat(tooLong.body()).contains("x".repeat(401));
        therapist.post(
                history, "version", "0", "history.drugs", "aspirin", "why.history.drugs", "Forgot it; \"by the way\"");
        Decision kept = Charts.open(SERVER, id).decisions().about("intake").get(0);
        assertThat(List.of(kept.about(), kept.proposed(), kept.chosen(), kept.reason()))
                .containsExactly("intake/history/history.drugs", "none", "aspirin", "Forgot it; \"by the way\"");
        assertThat(kept.verdict()).isEqualTo(Verdict.CHANGE);
        assertThat(SERVER.records()
                        .trail()
                        .list(Chain.ofPerson(Charts.open(SERVER, id).person().id()), 0, 5))
                .anyMatch(entry -> entry.entityId().equals(kept.id()));
        assertThat(therapist.get("/episodes/" + id + "/history").body()).contains("Forgot it; ");

        // The same once more, other fields, and what was told with more to it need none.
        String again = "aspirin";
        assertThat(therapist
                        .post(history, "version", "1", "history.drugs", again, "history.work", "baker")
                        .statusCode())
                .isEqualTo(302);
        assertThat(therapist
                        .post(
                                history,
                                "version",
                                "2",
                                "history.drugs",
                                again,
                                "history.work",
                                "baker",
                                "history.onset",
                                "lifting a box at work")
                        .statusCode())
                .isEqualTo(302);
        assertThat(Charts.open(SERVER, id).decisions().about("intake")).hasSize(1);
        // Taken first and taken out later is other than told too.
        String tolerance = "/episodes/" + id + "/sections/tolerance";
        therapist.post(tolerance, "version", "0", "take", "*");
        assertThat(therapist
                        .post(tolerance, "version", "1", "irritability.usualPain", "3")
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void oneOfTheDemoHasToldAndWaits() {
        String id = Charts.demoEpisode(SERVER, "Tilde");
        var told = Charts.open(SERVER, id).intakes().list().get(0);
        // Every answer is one that the pages can give, and every question but free texts is answered.
        for (Question question : Questions.all()) {
            var answer = told.answers().path(question.id());
            boolean text = question.kind() == Question.Kind.TEXT;
            assertThat(text || !answer.isMissingNode()).as(question.id()).isTrue();
            if (!question.values().isEmpty()) {
                List<String> given = answer.isArray()
                        ? answer.valueStream().map(each -> each.asString("")).toList()
                        : List.of(answer.asString(""));
                assertThat(question.values()).as(question.id()).containsAll(given);
            }
        }
        assertThat(therapist.get("/today").body()).contains("Tilde Navarro");
        assertThat(therapist.get("/episodes/" + id + "/screen").body()).contains("Take all on this page");
    }

    @Test
    void theReasonIsKeptWithADraft() {
        String id = codes.episode("Ole Strand");
        Visitor person = codes.opened(codes.code(id));
        person.post("/before/12", "drugs", "none", "go", "done");
        therapist.get("/episodes/" + id + "/history");
        therapist.post(
                "/episodes/" + id + "/drafts/history",
                "version",
                "0",
                "history.drugs",
                "aspirin",
                "why.history.drugs",
                "said so at the desk");
        assertThat(therapist.get("/episodes/" + id + "/history").body()).contains("said so at the desk");
    }

    @Test
    void whatWasTappedIsKeptAndWhatCannotBeKeptIsSaidAndShownAgain() {
        String id = codes.episode("Tom Vale");
        String code = codes.code(id);
        Visitor person = codes.opened(code);
        person.post("/before/6", "where", "l-calf", "where", "back");
        Visitor again = codes.opened(code);
        assertThat(TestServer.location(again.get("/before"))).isEqualTo("/before/7");
        assertThat(again.get("/before/6").body()).contains("value=\"l-calf\" checked");

        String name = "x".repeat(200);
        HttpResponse<String> wrong =
                person.post("/before/7", "sinceCount", "some", "began", "never", "beganText", name);
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body())
                .contains("Write a number, like 3.")
                .contains("Tap one of the answers.")
                .contains(name)
                .contains("value=\"some\"");
        assertThat(person.get("/before/7").body()).contains(name);
        HttpResponse<String> tooLong = person.post("/before/11", "work", "y".repeat(1001), "goal", "dance");
        assertThat(tooLong.statusCode()).isEqualTo(422);
        assertThat(tooLong.body()).contains("y".repeat(1001)).contains("This text is too long");
        assertThat(person.get("/before/11").body()).contains("dance");
        // A danger counts whatever else is wrong with the page.
        person.post("/before/1", "saddleNumbness", "perhaps", "sexualChange", "yes");
        assertThat(Charts.open(SERVER, id).checkIns().alerts()).hasSize(1);
        person.post("/before/11", "work", "z".repeat(3_000_000));
        assertThat(person.get("/before/11").body()).contains("dance");
    }
}
