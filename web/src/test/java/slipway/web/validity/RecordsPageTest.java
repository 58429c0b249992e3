package slipway.web.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;
import slipway.reasoning.response.rules.Rule;
import slipway.reasoning.response.rules.RuleBook;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

class RecordsPageTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final int MOST_SECONDS = 60;

    private final Visitor therapist = SERVER.signedIn("therapist");

    @Test
    void everyRuleStandsThereInWordsWithItsSource() {
        String page = therapist.get("/validity/rules").body();
        List<Rule> rules = RuleBook.bundled().list();
        assertThat(page.split("id=\"rule-", -1)).hasSize(rules.size() + 1);
        assertThat(page)
                .contains("good of last 5 ≥ 4 sessions")
                .contains("2 rungs down, once a day")
                .doesNotContain("belowCeiling");
    }

    @Test
    void countsWhatWasAnsweredAndSaysWhenWeeksAreTooFew() throws Exception {
        therapist.get("/validity/rules");
        assertThat(therapist.post("/validity/count", "page", "calibration").statusCode())
                .isEqualTo(302);
        var tallies = SERVER.server().part(Tallies.class);
        String clinic = Charts.therapist(SERVER).clinicId();
        tallies.idle().get(MOST_SECONDS, TimeUnit.SECONDS);
        Tally tally = tallies.of(clinic).tally().orElseThrow();
        // Two of the demo people reported: one nine times, one once.
        assertThat(tally.people()).isGreaterThanOrEqualTo(2);
        assertThat(tally.reports()).isGreaterThanOrEqualTo(10);
        assertThat(tally.fired("new-weakness")).isPositive();
        String page = therapist.get("/validity/calibration").body();
        assertThat(page).contains(tally.people() + " people with reports from home, " + tally.reports() + " reports");
        assertThat(page).containsAnyOf("Too few weeks to judge", "No week yet");
        String rules = therapist.get("/validity/rules").body();
        assertThat(rules).contains(tally.fired("new-weakness") + " of " + tally.reports());
        String person =
                Charts.open(SERVER, Charts.demoEpisode(SERVER, "Alma")).person().id();
        assertThat(SERVER.records().trail().list(Chain.ofPerson(person), Long.MAX_VALUE, 200))
                .extracting(TrailEntry::who)
                .contains("validity");
    }
}
