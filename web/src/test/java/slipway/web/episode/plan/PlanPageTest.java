package slipway.web.episode.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import slipway.care.record.access.AccessLink;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;
import tools.jackson.databind.node.ObjectNode;

class PlanPageTest {
    private static final TestServer SERVER = TestServer.shared();

    private final Visitor therapist = SERVER.signedIn("therapist");
    private final String id = Charts.demoEpisode(SERVER, "Rosario");

    @Test
    void aPlanAtHomeStandsBesideWhatWouldBeGivenNow() {
        assertThat(therapist.get("/episodes/" + id + "/plan").body()).doesNotContain("was made from something else");
        Chart chart = Charts.open(SERVER, id);
        ObjectNode choices = chart.section(Section.CHOICES).content();
        choices.withObject("/choices")
                .putArray("refused")
                .addObject()
                .put("exercise", chart.visits().tries().get(0).entry().exerciseId())
                .put("reason", "does not like it");
        chart.save(Section.CHOICES, chart.section(Section.CHOICES).version(), choices);
        assertThat(therapist.get("/episodes/" + id + "/plan").body())
                .contains("was made from something else")
                .contains("As it was, and as it would be now");
        String version = therapist.get("/episodes/" + id + "/plans/1").body();
        assertThat(version)
                .contains("Changed in the record since:")
                .contains("choices.")
                .contains("The program of now says the same of every exercise from the same inputs.")
                .contains("<span class=\"state bad\">differs</span>");
    }

    @Test
    void oneSheetCarriesANewCodeThatIsNotKept() {
        int before = links();
        int papers = Charts.open(SERVER, id).documents().list().size();
        therapist.get("/episodes/" + id + "/plan");
        HttpResponse<String> sheet =
                therapist.post("/episodes/" + id + "/sheet", "language", "en", "paper", "letter", "type", "normal");
        assertThat(sheet.statusCode()).isEqualTo(200);
        assertThat(sheet.body()).startsWith("%PDF-");
        assertThat(sheet.headers().firstValue("Cache-Control"))
                .hasValueSatisfying(value -> assertThat(value).contains("no-store"));
        assertThat(links()).isEqualTo(before + 1);
        assertThat(Charts.open(SERVER, id).documents().list()).hasSize(papers);
    }

    private int links() {
        return (int) SERVER.records().links().list(id, Charts.therapist(SERVER)).stream()
                .map(AccessLink::id)
                .count();
    }
}
