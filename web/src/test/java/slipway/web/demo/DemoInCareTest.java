package slipway.web.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.caseload.CaseloadFigures;
import slipway.care.facts.Outcomes;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.caseload.OutcomeRow;
import slipway.care.record.caseload.TodayRow;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanDraft;
import slipway.care.visit.Visit;
import slipway.documents.visit.PlanJson;
import slipway.web.Charts;
import slipway.web.TestServer;
import tools.jackson.databind.json.JsonMapper;

class DemoInCareTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final int MOST = 500;
    private static final int FEWEST_SHOWN = 5;

    @Test
    void enoughOfThoseInCareStandStillAndEnoughMove() {
        Act act = lead();
        List<OutcomeRow> rows = CaseloadFigures.rows(SERVER.records().caseload(), MOST, ZoneId.systemDefault(), act);
        List<Boolean> stalled = Outcomes.of(rows, act.at(), ZoneId.systemDefault()).stream()
                .flatMap(each -> each.stalled().stream())
                .toList();
        assertThat(stalled.stream().filter(each -> each)).hasSizeGreaterThanOrEqualTo(FEWEST_SHOWN);
        assertThat(stalled.stream().filter(each -> !each)).hasSizeGreaterThanOrEqualTo(FEWEST_SHOWN);
    }

    private static Act lead() {
        StaffAccount lead =
                SERVER.records().staff().credentials("lead").orElseThrow().account();
        return new Act(lead.id(), Role.LEAD, lead.clinicId(), Instant.now());
    }

    /** The plan that was taken over says the same as one computed for the person. */
    @Test
    void aPlanTakenOverIsThePlanOfThePerson() {
        for (String name : List.of("Ysolde Brenner", "Egil Strand")) {
            Chart chart = Charts.open(SERVER, Charts.demoEpisode(SERVER, name));
            PlanDraft kept = chart.plans().list().get(0).plan();
            CaseFile file = CaseFiles.read(kept.inputs().getBytes(StandardCharsets.UTF_8), "kept");
            assertThat(kept.inputs()).contains(name);
            assertThat(kept.body())
                    .isEqualTo(JsonMapper.shared()
                            .readTree(PlanJson.of(Visit.plan(file, kept.stamp().programVersion()))));
        }
    }

    /** Everybody at home has a first score; whoever is new today has none yet. */
    @Test
    void whoeverIsAtHomeHasScores() {
        Act act = Charts.therapist(SERVER);
        assertThat(SERVER.records().caseload().today(MOST, act).stream()
                        .filter(row -> row.name().endsWith("(invented)"))
                        .filter(row -> row.newestPlan().isPresent())
                        .map(TodayRow::episodeId)
                        .map(id -> Charts.open(SERVER, id).measures().list())
                        .toList())
                .isNotEmpty()
                .noneMatch(List::isEmpty);
    }
}
