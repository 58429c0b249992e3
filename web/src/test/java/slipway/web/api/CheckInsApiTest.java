package slipway.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static slipway.web.api.ApiCaller.header;
import static slipway.web.api.ApiCaller.json;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import slipway.care.follow.CheckInFile;
import slipway.care.follow.Follow;
import slipway.care.record.access.ApiScope;
import slipway.care.record.chart.Chart;
import slipway.care.record.follow.Alert;
import slipway.web.episode.Cases;
import slipway.web.episode.home.HomeCourse;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Reports on the plan of somebody who has not reported before. */
class CheckInsApiTest {
    private static final ApiCaller CALLER = ApiCaller.of(
            "therapist",
            ApiScope.PLANS_READ,
            ApiScope.CHECK_INS_READ,
            ApiScope.CHECK_INS_WRITE,
            ApiScope.DOCUMENTS_READ,
            ApiScope.CASES_READ);

    /** Episodes with a released plan, by number of reports. */
    private static List<String> released() {
        return json(CALLER.get("/api/v1/cases?limit=100"))
                .path("cases")
                .valueStream()
                .map(each -> each.path("episode").asString())
                .filter(id ->
                        CALLER.get("/api/v1/cases/" + id + "/plans/released").statusCode() == 200)
                .sorted(java.util.Comparator.comparingInt(
                        id -> chart(id).checkIns().list().size()))
                .toList();
    }

    private static Chart chart(String episode) {
        return ApiCaller.records()
                .charts()
                .open(episode, ApiCaller.program())
                .chartIfOpen()
                .orElseThrow();
    }

    private static HttpResponse<byte[]> send(String episode, ObjectNode report) {
        return CALLER.send(
                "POST",
                "/api/v1/cases/" + episode + "/check-ins",
                report.toString(),
                "Content-Type",
                "application/json");
    }

    private static ObjectNode report(String exercise) {
        String id = UUID.randomUUID().toString();
        return JsonMapper.shared()
                .createObjectNode()
                .put("checkin_id", id)
                .put("session_id", id)
                .put("exercise", exercise)
                .put("started_at", "2026-03-03T18:00:00Z")
                .put("before", 2)
                .put("repetitions_done", 3)
                .put("worst", 3)
                .put("kind", "tingling")
                .put("settle_minutes", 5)
                .put("still_numb", "no")
                .put("new_weakness", "no")
                .put("emergency", "no")
                .put("reported_at", "2026-03-03T18:20:00Z");
    }

    @Test
    void aReportIsKeptOnceAndAnsweredAsTheCommandAnswersIt() {
        String episode = released().get(0);
        assertThat(chart(episode).checkIns().list()).isEmpty();
        JsonNode plan = json(CALLER.get("/api/v1/cases/" + episode + "/plans/released"));
        ObjectNode report = report(plan.path("exercises").get(0).asString());
        HttpResponse<byte[]> first = send(episode, report);
        assertThat(first.statusCode()).isEqualTo(201);

        var course = ApiCaller.server().server().part(HomeCourse.class);
        HomeCourse.Home home = course.home(chart(episode)).orElseThrow();
        var read =
                CheckInFile.read("report", CheckInFile.text(report).getBytes(StandardCharsets.UTF_8), home.exercises());
        JsonNode expected = JsonMapper.shared()
                .valueToTree(Follow.of(course.visit(home), read, List.of(), List.of(), Optional.empty())
                        .results()
                        .get(0));
        assertThat(json(first).path("decision").toString()).isEqualTo(expected.toString());

        HttpResponse<byte[]> again = send(episode, report);
        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(json(again)).isEqualTo(json(first));
        assertThat(send(episode, report.deepCopy().put("worst", 4)).statusCode())
                .isEqualTo(409);
        assertThat(json(CALLER.get("/api/v1/cases/" + episode + "/check-ins")).path("checkIns"))
                .hasSize(1);

        // Whatever else is wrong with it, a danger sign is kept, answered, and somebody hears of it.
        ObjectNode sign = report("no such exercise").put("emergency", "yes").put("worst", "very much");
        HttpResponse<byte[]> danger = send(episode, sign);
        assertThat(danger.statusCode()).isEqualTo(201);
        assertThat(json(danger).path("contact").asString()).isEqualTo("emergency-number");
        assertThat(json(danger).path("emergencyNumber").asString()).isEqualTo("911");
        assertThat(json(danger).path("locked").asBoolean()).isTrue();
        assertThat(json(danger).path("notRead")).hasSizeGreaterThan(1);
        assertThat(chart(episode).checkIns().alerts()).extracting(Alert::kind).contains("emergency");
        // Even under an id that was used before.
        HttpResponse<byte[]> reused =
                send(episode, report.deepCopy().put("new_weakness", "yes").put("worst", 9));
        assertThat(reused.statusCode()).isEqualTo(201);
        assertThat(json(reused).path("id").asString())
                .isNotEqualTo(report.path("checkin_id").asString());
        assertThat(chart(episode).checkIns().alerts()).extracting(Alert::kind).contains("new-weakness");
    }

    @Test
    void mistakesOfAReportAreNamedTogether() {
        String episode = released().get(1);
        int kept = chart(episode).checkIns().list().size();
        HttpResponse<byte[]> refused =
                send(episode, report("no-such-exercise").put("worst", 12).put("before", -1));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(json(refused)
                        .path("mistakes")
                        .valueStream()
                        .map(each -> each.path("path").asString()))
                .contains("exercise", "worst", "before");
        assertThat(send(episode, report("x").put("colour", "red").put("checkin_id", "?"))
                        .statusCode())
                .isEqualTo(422);
        assertThat(chart(episode).checkIns().list()).hasSize(kept);
    }

    @Test
    void thePlanAtHomeHasItsDocuments() {
        String episode = released().get(1);
        String path = "/api/v1/cases/" + episode + "/documents";
        JsonNode sheet = json(CALLER.get(path))
                .path("documents")
                .valueStream()
                .filter(each -> each.path("mediaType").asString().equals("application/pdf"))
                .findFirst()
                .orElseThrow();
        HttpResponse<byte[]> bytes = CALLER.get(path + "/" + sheet.path("id").asString());
        assertThat(new String(bytes.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        assertThat(header(bytes, "ETag")).contains(sheet.path("sha256").asString());
        assertThat(bytes.body()).hasSize(sheet.path("size").asInt());
        HttpResponse<byte[]> plan = CALLER.get("/api/v1/cases/" + episode + "/plans/released");
        assertThat(CALLER.get("/api/v1/cases/" + episode + "/plans/released", "If-None-Match", header(plan, "ETag"))
                        .statusCode())
                .isEqualTo(304);
        assertThat(Cases.digest(header(plan, "ETag"))).hasSize(64);
    }

    @Test
    void whoHasNothingAtHomeHasNothingToReportOn() {
        String episode = json(CALLER.get("/api/v1/cases?limit=100"))
                .path("cases")
                .valueStream()
                .map(each -> each.path("episode").asString())
                .filter(id -> chart(id).plans().released().isEmpty())
                .findFirst()
                .orElseThrow();
        assertThat(send(episode, report("x")).statusCode()).isEqualTo(409);
    }
}
