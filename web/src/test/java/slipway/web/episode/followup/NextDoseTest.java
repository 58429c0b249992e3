package slipway.web.episode.followup;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Decision;
import slipway.care.record.chart.Verdict;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

class NextDoseTest {
    private static final TestServer SERVER = TestServer.ofItsOwn();
    private static final Pattern PROPOSED = Pattern.compile(
            "name=\"exercise\" value=\"([^\"]+)\"><input type=\"hidden\" name=\"proposed\" value=\"([^\"]+)\"");

    private final Visitor therapist = SERVER.signedIn("therapist");
    private final String id = Charts.demoEpisode(SERVER, "Alma");

    private record Offer(String exercise, String proposed) {}

    private String page() {
        return therapist.get("/episodes/" + id + "/follow").body();
    }

    private Offer offer() {
        var found = PROPOSED.matcher(page());
        assertThat(found.find()).isTrue();
        return new Offer(found.group(1), found.group(2));
    }

    private HttpResponse<String> decide(Offer offer, String action, String... more) {
        String[] fields = new String[more.length + 6];
        System.arraycopy(more, 0, fields, 0, more.length);
        String[] fixed = {"exercise", offer.exercise(), "proposed", offer.proposed(), "action", action};
        System.arraycopy(fixed, 0, fields, more.length, fixed.length);
        return therapist.post("/episodes/" + id + "/doses", fields);
    }

    @Test
    void aRefusalNeedsAReasonAndChangesNothingThenAChangeIsInForceAtOnce() {
        assertThat(page()).contains("Why this, not more, not less").contains("within the limit");
        Offer offer = offer();
        int papers = Charts.open(SERVER, id).documents().list().size();
        HttpResponse<String> bare = decide(offer, "refuse", "reason", " ");
        assertThat(bare.statusCode()).isEqualTo(422);
        assertThat(bare.body()).contains("Say why; it is kept with the decision.");
        decide(offer, "refuse", "reason", "away next week");
        assertThat(page()).contains("away next week");
        assertThat(offer()).isEqualTo(offer);

        HttpResponse<String> wrong = change(offer, "7", "3");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body())
                .contains("must be a whole number within 7 and 30, was 3")
                .contains("value=\"7\"");
        assertThat(change(offer, "7", "9").statusCode()).isEqualTo(302);
        assertThat(page()).contains("7 × 1, 1 a day, 100 % of the range").contains("at most 9, 2 a day");

        Chart chart = Charts.open(SERVER, id);
        var kept = chart.decisions().about("plan/1/dose");
        assertThat(kept).extracting(Decision::verdict).containsExactly(Verdict.REFUSE, Verdict.CHANGE);
        assertThat(kept.get(1).chosen()).isEqualTo("7 × 1, 1 a day; at most 9, 2 a day");
        // A sheet and a guide more, with the new dose.
        assertThat(chart.documents().list()).hasSize(papers + 2);
        assertThat(SERVER.records().trail().list(Chain.ofPerson(chart.person().id()), Long.MAX_VALUE, 20))
                .extracting(TrailEntry::entityId)
                .contains(kept.get(0).id(), kept.get(1).id());
        // Proposed anew only after a report.
        assertThat(page()).contains("Nothing was reported since it was set");
    }

    private HttpResponse<String> change(Offer offer, String repetitions, String most) {
        return decide(
                offer,
                "change",
                "repetitions",
                repetitions,
                "sessions",
                "1",
                "mostRepetitions",
                most,
                "mostSessions",
                "2",
                "tried",
                "yes",
                "reason",
                "wants to go slowly");
    }

    @Test
    void aProposalThatIsNoLongerMadeIsNotTaken() {
        HttpResponse<String> answer =
                decide(new Offer(offer().exercise(), "30 × 1, 6 a day; at most 30, 6 a day"), "accept");
        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(page()).contains("Meanwhile something else is proposed");
    }

    @Test
    void nothingIsProposedWhileAnAlertWaits() {
        String stopped = Charts.demoEpisode(SERVER, "Bjarne");
        assertThat(Charts.open(SERVER, stopped).checkIns().alerts())
                .anyMatch(alert -> alert.acknowledged().isEmpty());
        assertThat(therapist.get("/episodes/" + stopped + "/follow").body())
                .contains("everything rests until")
                .doesNotContain("name=\"proposed\"");
    }
}
