package slipway.web.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import slipway.care.record.Act;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.mechanics.body.Side;
import slipway.web.Charts;
import slipway.web.TestServer;

/** Papers that are due, on the page of the day and on the page where they are written. */
class PapersDueTest {
    private static final TestServer SERVER = TestServer.shared();

    private static Chart begun(String name, int daysAgo, String payer) {
        Act now = Charts.therapist(SERVER);
        Act then = now.at(now.at().minus(Duration.ofDays(daysAgo)));
        String person =
                SERVER.records().people().add(Charts.details(name), then).id();
        Chart chart = SERVER.records()
                .charts()
                .begin(
                        person,
                        Side.RIGHT,
                        then.userId(),
                        Map.of(Section.PAPERWORK, Charts.json("{\"paperwork\": {\"payer\": \"%s\"}}".formatted(payer))),
                        then);
        chart.visits().start();
        return chart;
    }

    private static String today() {
        return SERVER.signedIn("therapist").get("/today?whose=mine").body();
    }

    private static String papers(String page) {
        int from = page.indexOf("<h2>Papers due</h2>");
        return from < 0 ? "" : page.substring(from, page.indexOf("</section>", from));
    }

    @Test
    void whatIsOverComesFirstAndWhatIsFarOrWithoutTermsDoesNotCome() {
        begun("Near Person", 24, "us-part-b");
        begun("Over Person", 40, "us-part-b");
        begun("Far Person", 3, "us-part-b");
        begun("Termless Person", 40, "none");
        String due = papers(today());
        assertThat(due).containsSubsequence("Over Person", "overdue", "Near Person", "soon");
        assertThat(due).doesNotContain("Far Person").doesNotContain("Termless Person");
        LocalDate limit = LocalDate.ofInstant(Charts.therapist(SERVER).at(), ZoneId.systemDefault())
                .plusDays(6);
        assertThat(due).contains("By %s the plan must be signed by the physician".formatted(limit));
    }

    @Test
    void nobodySeesThePapersOfSomebodyOutOfReach() {
        Chart chart = begun("Reached Person", 40, "us-part-b");
        Act lead = Charts.therapist(SERVER);
        assertThat(SERVER.records()
                        .caseload()
                        .paperTrails(List.of(chart.episode().id()), lead))
                .hasSize(1);
        Act colleague = new Act(
                SERVER.records()
                        .staff()
                        .credentials("colleague")
                        .orElseThrow()
                        .account()
                        .id(),
                lead.role(),
                lead.clinicId(),
                lead.at());
        assertThat(SERVER.records()
                        .caseload()
                        .paperTrails(List.of(chart.episode().id()), colleague))
                .isEmpty();
    }
}
