package slipway.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static slipway.web.api.ApiCaller.header;
import static slipway.web.api.ApiCaller.json;
import static slipway.web.api.ApiCaller.text;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import slipway.care.casefile.CaseFiles;
import slipway.care.record.SameJson;
import slipway.care.record.access.ApiScope;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;
import slipway.care.visit.Visit;
import slipway.documents.visit.PlanJson;
import slipway.exercises.yaml.YamlDocument;
import slipway.web.shell.Pages;
import tools.jackson.databind.JsonNode;

class CasesApiTest {
    private static final String YAML = "application/yaml";
    private static final String STIFF = ApiCaller.example("low-irritability-stiff");

    private final ApiCaller caller = ApiCaller.of(
            "therapist", ApiScope.CASES_READ, ApiScope.CASES_WRITE, ApiScope.PLANS_READ, ApiScope.FHIR_READ);

    private HttpResponse<byte[]> add(String body, String key) {
        return caller.send("POST", "/api/v1/cases", body, "Content-Type", YAML, "Idempotency-Key", key);
    }

    private String added() {
        return json(add(STIFF, UUID.randomUUID().toString())).path("episode").asString();
    }

    private static Chart chart(String episode) {
        return ApiCaller.records()
                .charts()
                .open(episode, ApiCaller.program())
                .chartIfOpen()
                .orElseThrow();
    }

    @Test
    void aCaseIsPutInOnceAndComesOutAsItWas() {
        String key = UUID.randomUUID().toString();
        HttpResponse<byte[]> first = add(STIFF, key);
        assertThat(first.statusCode()).isEqualTo(201);
        String episode = json(first).path("episode").asString();
        assertThat(header(first, "Location")).isEqualTo("/api/v1/cases/" + episode);
        HttpResponse<byte[]> again = add(STIFF, key);
        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(json(again)).isEqualTo(json(first));
        assertThat(add(STIFF + "# more\n", key).statusCode()).isEqualTo(409);

        HttpResponse<byte[]> read = caller.get("/api/v1/cases/" + episode, "Accept", YAML);
        JsonNode sent = YamlDocument.read("sent", STIFF.getBytes(StandardCharsets.UTF_8))
                .root();
        assertThat(SameJson.same(YamlDocument.read("read", read.body()).root(), sent))
                .isTrue();
        JsonNode asJson = json(caller.get("/api/v1/cases/" + episode, "Accept", "application/json"));
        assertThat(SameJson.same(asJson, sent)).isTrue();
        assertThat(caller.get("/api/v1/cases/" + episode, "If-None-Match", header(read, "ETag"))
                        .statusCode())
                .isEqualTo(304);
        // Other programs send JSON too.
        assertThat(caller.send(
                                "POST",
                                "/api/v1/cases",
                                asJson.toString(),
                                "Content-Type",
                                "application/json",
                                "Idempotency-Key",
                                UUID.randomUUID().toString())
                        .statusCode())
                .isEqualTo(201);
    }

    @Test
    void aChangeIsMadeOnTheVersionThatWasReadAsAWhole() {
        String path = "/api/v1/cases/" + added();
        HttpResponse<byte[]> read = caller.get(path, "Accept", YAML);
        String changed =
                text(read).replace("onsetDeg: 65", "onsetDeg: 60").replace("durationWeeks: ", "durationWeeks: 1");
        assertThat(changed).isNotEqualTo(text(read));
        assertThat(caller.send("PUT", path, changed, "Content-Type", YAML).statusCode())
                .isEqualTo(428);
        HttpResponse<byte[]> done =
                caller.send("PUT", path, changed, "Content-Type", YAML, "If-Match", header(read, "ETag"));
        assertThat(done.statusCode()).isEqualTo(200);
        assertThat(json(done).path("changed").valueStream().map(JsonNode::asString))
                .containsExactly("history", "tolerance");
        Chart chart = chart(path.substring(path.lastIndexOf('/') + 1));
        assertThat(chart.section(Section.TOLERANCE).version()).isEqualTo(2);
        assertThat(chart.section(Section.SITES).version()).isEqualTo(1);

        // Whoever read before that is told, and nothing changes.
        assertThat(caller.send("PUT", path, text(read), "Content-Type", YAML, "If-Match", header(read, "ETag"))
                        .statusCode())
                .isEqualTo(412);
        assertThat(chart.section(Section.TOLERANCE).version()).isEqualTo(2);
        assertThat(caller.send("PUT", path, changed, "Content-Type", YAML, "If-Match", header(done, "ETag"))
                        .statusCode())
                .isEqualTo(200);
        assertThat(chart.section(Section.TOLERANCE).version()).isEqualTo(2);
    }

    @Test
    void allMistakesAreNamedWithTheirPlaces() {
        String episode = added();
        String path = "/api/v1/cases/" + episode;
        HttpResponse<byte[]> read = caller.get(path, "Accept", YAML);
        String wrong = text(read).replace("onsetDeg: 65", "onsetDeg: 650").replaceFirst("side: \\w+", "side: middle");
        HttpResponse<byte[]> refused =
                caller.send("PUT", path, wrong, "Content-Type", YAML, "If-Match", header(read, "ETag"));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(header(refused, "Content-Type")).isEqualTo("application/problem+json");
        List<String> paths = new ArrayList<>();
        json(refused).path("mistakes").forEach(mistake -> {
            assertThat(mistake.path("line").asInt()).isPositive();
            paths.add(mistake.path("path").asString());
        });
        assertThat(paths).anyMatch(each -> each.equals("side")).anyMatch(each -> each.endsWith("onsetDeg"));

        String another = text(read).replaceFirst("statureCm: \\d+", "statureCm: 150");
        HttpResponse<byte[]> person =
                caller.send("PUT", path, another, "Content-Type", YAML, "If-Match", header(read, "ETag"));
        assertThat(person.statusCode()).isEqualTo(422);
        assertThat(json(person).path("mistakes").get(0).path("path").asString()).isEqualTo("person");
        assertThat(chart(episode).section(Section.TOLERANCE).version()).isEqualTo(1);
    }

    @Test
    void aPlanIsThatOfTheCommand() {
        var bytes = STIFF.getBytes(StandardCharsets.UTF_8);
        HttpResponse<byte[]> plan = caller.send("POST", "/api/v1/plans", bytes, "Content-Type", YAML);
        assertThat(text(plan)).isEqualTo(PlanJson.of(Visit.plan(CaseFiles.read(bytes, "case"), Pages.version())));
        JsonNode stopped = json(caller.send(
                "POST", "/api/v1/plans", ApiCaller.example("red-flag-saddle-numbness"), "Content-Type", YAML));
        assertThat(stopped.has("screening")).isTrue();
        assertThat(stopped.has("plan")).isFalse();
        assertThat(json(caller.get("/api/v1/cases/" + added() + "/plan")).path("plan"))
                .isEqualTo(json(plan).path("plan"));
    }

    @Test
    void anEpisodeLeavesAsFhirAndTheTrailNamesTheToken() {
        String episode = added();
        HttpResponse<byte[]> bundle = caller.get("/api/v1/cases/" + episode + "/fhir");
        assertThat(json(bundle).path("resourceType").asString()).isEqualTo("Bundle");
        String person = chart(episode).person().id();
        TrailEntry newest = ApiCaller.records().trail().list(Chain.ofPerson(person), 0, 9).stream()
                .filter(entry -> entry.action() == Action.EXPORT)
                .findFirst()
                .orElseThrow();
        assertThat(newest.entity()).isEqualTo("fhir");
        assertThat(newest.who()).isEqualTo(ApiCaller.account("therapist").id() + "/" + caller.tokenId());
    }

    @Test
    void aTokenSeesWhomItsAccountSees() {
        String episode = added();
        ApiCaller colleague = ApiCaller.of("colleague", ApiScope.CASES_READ);
        assertThat(colleague.get("/api/v1/cases/" + episode).statusCode()).isEqualTo(404);
        assertThat(text(colleague.get("/api/v1/cases"))).doesNotContain(episode).contains("\"episode\"");
        assertThat(text(caller.get("/api/v1/cases"))).contains(episode);
        assertThat(text(ApiCaller.of("lead", ApiScope.CASES_READ).get("/api/v1/cases")))
                .contains(episode);
    }

    @Test
    void theListHasPages() {
        List<String> whole = episodes(json(caller.get("/api/v1/cases?limit=100")));
        List<String> pages = new ArrayList<>();
        String after = "";
        do {
            JsonNode page = json(caller.get(
                    "/api/v1/cases?limit=2&after=" + java.net.URLEncoder.encode(after, StandardCharsets.UTF_8)));
            pages.addAll(episodes(page));
            after = page.path("next").asString("");
        } while (!after.isEmpty());
        assertThat(pages).isEqualTo(whole).hasSizeGreaterThan(3);
        HttpResponse<byte[]> refused = caller.get("/api/v1/cases?limit=0&name=" + "x".repeat(90));
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(json(refused).path("mistakes")).hasSize(2);
        assertThat(caller.get("/api/v1/cases?after=nonsense").statusCode()).isEqualTo(400);
    }

    private static List<String> episodes(JsonNode page) {
        return page.path("cases")
                .valueStream()
                .map(each -> each.path("episode").asString())
                .toList();
    }

    @Test
    void onlyALeadPutsSomebodyElseInCharge() {
        String path = "/api/v1/cases?therapist=colleague";
        String key = UUID.randomUUID().toString();
        assertThat(caller.send("POST", path, STIFF, "Content-Type", YAML, "Idempotency-Key", key)
                        .statusCode())
                .isEqualTo(422);
        HttpResponse<byte[]> made = ApiCaller.of("lead", ApiScope.CASES_WRITE)
                .send("POST", path, STIFF, "Content-Type", YAML, "Idempotency-Key", key);
        assertThat(chart(json(made).path("episode").asString()).episode().therapistId())
                .isEqualTo(ApiCaller.account("colleague").id());
    }
}
