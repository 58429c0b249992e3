package slipway.web.episode.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Decision;
import slipway.care.record.chart.ResultKind;
import slipway.care.record.chart.Verdict;
import slipway.care.record.content.Section;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

class LocateTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final Pattern DIGEST = Pattern.compile("name=\"digest\" value=\"([0-9a-f]{64})\"");

    /** A drop foot with weak inversion and abduction: above the fibular neck. */
    private static final String FINDINGS = """
            {"examination":{"right":{"strength":{"ankle_dorsiflexors":"3","hallux_extensors":"3","ankle_invertors":"4",
            "hip_abductors":"4","ankle_plantarflexors":"5"},"reflexes":{"achilles":"normal","patellar":"normal"},
            "sensation":{"L5_dermatome":"reduced"},"provocation":{"slr":"positive","slump":"positive"}}}}
            """;

    private final Visitor therapist = SERVER.signedIn("therapist");

    private static String begin(String name, Map<Section, String> sections) {
        var content = new java.util.EnumMap<Section, tools.jackson.databind.node.ObjectNode>(Section.class);
        sections.forEach((section, text) -> content.put(section, Charts.json(text)));
        return Charts.begin(SERVER, name, content).episode().id();
    }

    private String page(String id) {
        return therapist.get("/episodes/" + id + "/locate").body();
    }

    private static Chart chart(String id) {
        return SERVER.records()
                .charts()
                .open(id, Charts.therapist(SERVER))
                .chartIfOpen()
                .orElseThrow();
    }

    private static Decision decision(String id) {
        return chart(id).decisions().about("sites").stream()
                .reduce((earlier, later) -> later)
                .orElseThrow();
    }

    private static String digest(String page) {
        Matcher found = DIGEST.matcher(page);
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    @Test
    void withoutFindingsItSaysSoAndOffersNoChance() {
        String page = page(begin("Nothing Found", Map.of()));
        assertThat(page).contains("nothing can be located").doesNotContain("Take these places");
    }

    @Test
    void everyRatioOpensItsSource() {
        String page = page(begin("Weak Foot", Map.of(Section.EXAMINATION, FINDINGS)));
        assertThat(page)
                .contains("strength of hip abductors right: 4")
                .contains("Al Nezari 2013")
                .contains("Majlesi 2008")
                .contains("Most likely: L5 root");
    }

    @Test
    void takenPlacesAreRecordedWithWhoWhenAndTheResult() {
        String id = begin("Taken", Map.of(Section.EXAMINATION, FINDINGS));
        String digest = digest(page(id));
        therapist.post("/episodes/" + id + "/locate/accept", "digest", digest, "version", "0");
        var sites = Charts.content(SERVER, id, Section.SITES).path("sites");
        double sum = 0;
        for (var site : sites) {
            sum += site.path("probability").asDouble();
            assertThat(site.path("reason").asString()).startsWith("located from the findings");
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
        assertThat(sites.get(0).path("site").asString()).isEqualTo("root L5 at foramen");
        assertThat(decision(id).verdict()).isEqualTo(Verdict.ACCEPT);
        assertThat(chart(id).results().newest(ResultKind.SITES)).isPresent();
        // Taken twice from one page: the second would overwrite what somebody else may have changed.
        therapist.post("/episodes/" + id + "/locate/accept", "digest", digest, "version", "0");
        assertThat(chart(id).section(Section.SITES).version()).isEqualTo(1);
    }

    @Test
    void whatWasShownBeforeTheFindingsChangedIsNotTaken() {
        String id = begin("Changed Meanwhile", Map.of(Section.EXAMINATION, FINDINGS));
        String digest = digest(page(id));
        therapist.post(
                "/episodes/" + id + "/sections/examination",
                "version",
                "1",
                "examination.right.reflexes.patellar",
                "absent");
        therapist.post("/episodes/" + id + "/locate/accept", "digest", digest, "version", "0");
        assertThat(page(id)).contains("The findings have changed since this page was shown");
        assertThat(Charts.content(SERVER, id, Section.SITES).isEmpty()).isTrue();
    }

    @Test
    void aRefusalNeedsAReason() {
        String id = begin("Refused", Map.of(Section.EXAMINATION, FINDINGS));
        therapist.get("/episodes/" + id + "/locate");
        therapist.post("/episodes/" + id + "/locate/refuse", "reason", " ");
        assertThat(chart(id).decisions().about("sites")).isEmpty();
        therapist.post("/episodes/" + id + "/locate/refuse", "reason", "imaging shows the neck");
        assertThat(decision(id).verdict()).isEqualTo(Verdict.REFUSE);
        assertThat(page(id)).contains("imaging shows the neck").contains("Name yours below");
    }

    @Test
    void ownPlacesAreCheckedAndRecordedAsAChange() {
        String id = begin("Own Places", Map.of(Section.EXAMINATION, FINDINGS));
        String form = "/episodes/" + id + "/sections/sites";
        therapist.get("/episodes/" + id + "/locate");
        var wrong = therapist.post(
                form,
                "version",
                "0",
                "sites[0].site",
                "fibular neck",
                "sites[0].probability",
                "70 %",
                "sites[0].reason",
                "tapping");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body())
                .contains("value=\"70 %\"")
                .contains("value=\"tapping\"")
                .contains("id=\"m-sites[0].probability\"");
        var right = therapist.post(
                form,
                "version",
                "0",
                "sites[0].site",
                "fibular neck",
                "sites[0].probability",
                "1",
                "sites[0].reason",
                "tapping",
                "sites[1].site",
                "");
        assertThat(right.statusCode()).isEqualTo(302);
        assertThat(decision(id).verdict()).isEqualTo(Verdict.CHANGE);
        assertThat(decision(id).chosen()).isEqualTo("fibular neck 100 %");
        assertThat(decision(id).reason()).isEqualTo("tapping");
    }

    @Test
    void anEarlierResultIsShownAsItWasBesideNow() {
        String id = begin("Earlier", Map.of());
        String form = "/episodes/" + id + "/sections/examination";
        therapist.get("/episodes/" + id + "/examine");
        therapist.post(form, "version", "0", "examination.right.sensation.lateral_thigh", "absent");
        String kept = chart(id).results().newest(ResultKind.SITES).orElseThrow().id();
        therapist.post(form, "version", "1", "examination.right.strength.ankle_dorsiflexors", "2");
        String page = therapist.get("/episodes/" + id + "/sites/" + kept).body();
        Matcher row = Pattern.compile("lateral femoral cutaneous nerve</th>(.*?)</tr>", Pattern.DOTALL)
                .matcher(page);
        assertThat(row.find()).isTrue();
        String[] cells = row.group(1).split("</td>", -1);
        // As it was and computed again from the findings of then are the same; those of now no longer point there.
        assertThat(cells[0]).isEqualTo(cells[1]);
        assertThat(cells[2]).isNotEqualTo(cells[0]);
        assertThat(therapist.get("/episodes/" + id + "/sites/none").statusCode())
                .isEqualTo(404);
    }
}
