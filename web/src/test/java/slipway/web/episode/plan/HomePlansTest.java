package slipway.web.episode.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.care.casefile.CaseFiles;
import slipway.care.follow.FollowPlans;
import slipway.care.follow.HomePlan;
import slipway.care.record.chart.PlanDraft;
import slipway.care.record.chart.ResultInputs;
import slipway.care.record.chart.Stamp;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.response.ladder.Ceiling;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class HomePlansTest {
    private static VisitPlan visit(String example) throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of("..", "examples", example + ".yaml"));
        return Visit.plan(CaseFiles.read(bytes, example), "test");
    }

    private static PlanDraft draft(ObjectNode ceilings, ObjectNode home) {
        ObjectNode none = JsonMapper.shared().createObjectNode();
        return new PlanDraft("", new ResultInputs(Map.of(), ""), new Stamp("test", "test"), none, ceilings, home);
    }

    @ParameterizedTest
    @ValueSource(strings = {"low-irritability-stiff", "high-irritability-acute"})
    void whatIsKeptIsFollowedAsIfItWereComputedNow(String example) throws IOException {
        VisitPlan visit = visit(example);
        ObjectNode kept =
                (ObjectNode) JsonMapper.shared().readTree(HomePlans.kept(visit).toString());
        HomePlan read = HomePlans.read(draft(JsonMapper.shared().createObjectNode(), kept))
                .orElseThrow();
        assertThat(read.exercises()).isNotEmpty().anyMatch(each -> !each.loads().isEmpty());
        assertThat(read.followed()).isEqualTo(FollowPlans.of(visit));

        List<String> first = List.of(visit.given().get(0).range().candidate().id());
        assertThat(read.only(first).followed()).isEqualTo(FollowPlans.of(visit.only(first)));
    }

    @Test
    void theCeilingThatTheTherapistSetHolds() throws IOException {
        VisitPlan visit = visit("low-irritability-stiff");
        String id = visit.given().get(0).range().candidate().id();
        ObjectNode ceilings = JsonMapper.shared().createObjectNode();
        ceilings.putObject(id).put("repetitions", 12).put("sessionsPerDay", 2);
        HomePlan read = HomePlans.read(draft(ceilings, HomePlans.kept(visit))).orElseThrow();
        assertThat(read.glide(id).orElseThrow().ceiling()).isEqualTo(new Ceiling(12, 2, 1));
        assertThat(read.followed().find(id).orElseThrow().ladder().ceiling()).isEqualTo(new Ceiling(12, 2, 1));
    }

    @Test
    void aPlanFromBeforeHasNothingKept() {
        ObjectNode none = JsonMapper.shared().createObjectNode();
        assertThat(HomePlans.read(draft(none, none))).isEmpty();
    }
}
