package slipway.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import slipway.care.casefile.CaseFiles;
import slipway.care.record.NotThere;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.chart.Chart;
import slipway.documents.visit.PlanJson;
import slipway.exercises.yaml.YamlDocument;
import slipway.web.episode.Cases;
import slipway.web.episode.home.HomeCourse;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Plans: of a case that is sent and not kept, of a case in the records, and the one that the person has at home. */
@RestController
class PlansApi {
    private final ApiDesk desk;
    private final Cases cases;
    private final HomeCourse course;

    PlansApi(ApiDesk desk, Cases cases, HomeCourse course) {
        this.desk = desk;
        this.cases = cases;
        this.course = course;
    }

    /** Nothing is kept, and nothing of it stands in the trail. */
    @PostMapping("/api/v1/plans")
    ResponseEntity<byte[]> compute(HttpServletRequest request) {
        byte[] body = Bodies.read(request, YamlDocument.MAX_BYTES, CasesApi.FORMS);
        var whole = new Assembly.Complete(CaseFiles.read(body, "case"), new String(body, StandardCharsets.UTF_8));
        return Json.ok(PlanJson.of(cases.visit(whole)));
    }

    @GetMapping("/api/v1/cases/{episode}/plan")
    ResponseEntity<byte[]> ofCase(@PathVariable String episode) {
        Chart chart = desk.open(episode);
        return Json.ok(PlanJson.of(cases.visit(CaseText.whole(chart, cases))));
    }

    @GetMapping("/api/v1/cases/{episode}/plans/released")
    ResponseEntity<byte[]> released(@PathVariable String episode, HttpServletRequest request) {
        Chart chart = desk.open(episode);
        HomeCourse.Home home = course.home(chart).orElseThrow(() -> new NotThere("released plan of episode", episode));
        String tag = Versions.tag("plan-" + home.plan().number());
        if (Versions.isKnown(request, tag)) {
            return Json.unchanged(tag);
        }
        ObjectNode answer = JsonMapper.shared().createObjectNode();
        answer.put("number", home.plan().number());
        home.plan().releasedAt().ifPresent(at -> answer.put("releasedAt", at.toString()));
        ArrayNode exercises = answer.putArray("exercises");
        home.exercises().forEach(exercises::add);
        answer.set("ceilings", home.plan().plan().ceilings());
        answer.set("plan", home.plan().plan().body());
        return Json.versioned(tag, answer);
    }
}
