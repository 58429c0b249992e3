package slipway.web.caseload;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.caseload.KeptFigures;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;
import tools.jackson.databind.node.ObjectNode;

class CaseloadPageTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final String PAGE = "/clinic/caseload";

    @Test
    void aLeadSeesFiguresWithoutNames() {
        Visitor lead = SERVER.signedIn("lead");
        assertThat(lead.get("/clinic").body()).contains(PAGE);
        String page = lead.get(PAGE).body();
        assertThat(page).contains("Change by measure", "Days to discharge", "Download the tables");
        assertThat(page).doesNotContain("Alma Ferrer");
        assertThat(SERVER.signedIn("therapist").get(PAGE).statusCode()).isEqualTo(403);
    }

    @Test
    void keptFiguresAreShownUntilTheyAreOldOrAskedForAgain() {
        try (TestServer server = TestServer.ofItsOwn()) {
            Visitor lead = server.signedIn("lead");
            String before = lead.get(PAGE).body();
            var act = Charts.therapist(server);
            var kept = server.records().caseload();
            var program = new Act("test", Role.PROGRAM, act.clinicId(), act.at());
            var many = kept.figures(program).orElseThrow();
            ObjectNode body = many.body();
            body.put("episodes", 123_456);
            kept.keep(new KeptFigures(act.at().minus(Duration.ofDays(2)), body), program);

            assertThat(before).doesNotContain("123456");
            assertThat(lead.get(PAGE).body()).contains("123456", "There are too many episodes for a download here");
            assertThat(lead.post(PAGE).statusCode()).isEqualTo(302);
            assertThat(lead.get(PAGE).body()).doesNotContain("123456");
        }
    }

    @Test
    void theTablesNameNobodyAndTheTrailNotesThem() throws IOException {
        Visitor lead = SERVER.signedIn("lead");
        lead.get(PAGE);
        HttpResponse<byte[]> answer = lead.bytes(HttpRequest.newBuilder(URI.create(SERVER.address() + PAGE + "/tables"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("_csrf=" + lead.token())));
        assertThat(answer.statusCode()).isEqualTo(200);
        Map<String, String> files = files(answer.body());
        assertThat(files.keySet())
                .containsExactly("episodes.csv", "visits.csv", "scores.csv", "reports.csv", "data-dictionary.csv");
        assertThat(files.getOrDefault("episodes.csv", "").lines().count()).isGreaterThan(1);
        assertThat(files.values()).noneMatch(text -> text.contains("Ferrer"));
        String clinic = Charts.therapist(SERVER).clinicId();
        assertThat(SERVER.records().trail().list(Chain.ofClinic(clinic), 0, 5))
                .anyMatch(entry ->
                        entry.action() == Action.EXPORT && entry.entity().contains("caseload"));
    }

    private static Map<String, String> files(byte[] bytes) throws IOException {
        var files = new LinkedHashMap<String, String>();
        try (var zip = new ZipInputStream(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }
}
