package slipway.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import slipway.care.casefile.CaseFiles;
import slipway.care.record.Saving;
import slipway.care.record.assembly.CaseSplit;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.exercises.yaml.YamlDocument;
import slipway.web.episode.Cases;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Cases as case files: which there are, one of them, a new one, a change. */
@RestController
class CasesApi {
    static final List<MediaType> FORMS = List.of(Bodies.YAML, MediaType.APPLICATION_JSON);

    private final ApiDesk desk;
    private final Cases cases;
    private final CaseList list;
    private final NewCases newCases;

    CasesApi(ApiDesk desk, Cases cases) {
        this.desk = desk;
        this.cases = cases;
        this.list = new CaseList(desk);
        this.newCases = new NewCases(desk);
    }

    @GetMapping("/api/v1/cases")
    ResponseEntity<byte[]> list(
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "50") String limit) {
        return Json.ok(list.page(name, after, limit));
    }

    @GetMapping("/api/v1/cases/{episode}")
    ResponseEntity<byte[]> read(@PathVariable String episode, HttpServletRequest request) {
        MediaType form = Bodies.wanted(request, FORMS);
        Chart chart = desk.open(episode);
        CaseText text = CaseText.of(chart, cases);
        boolean yaml = form.equals(Bodies.YAML);
        String tag = Versions.tag(text.version() + (yaml ? "-yaml" : "-json"));
        if (Versions.isKnown(request, tag)) {
            return Json.unchanged(tag);
        }
        desk.noteExport(chart, "episode", episode);
        String body = yaml ? text.yaml() : text.tree().toString();
        return ResponseEntity.ok().eTag(tag).contentType(form).body(body.getBytes(StandardCharsets.UTF_8));
    }

    @PostMapping("/api/v1/cases")
    ResponseEntity<byte[]> add(@RequestParam(defaultValue = "") String therapist, HttpServletRequest request) {
        byte[] body = Bodies.read(request, YamlDocument.MAX_BYTES, FORMS);
        CaseSplit read = CaseSplit.read(body, "case", cases.today());
        NewCases.Made made = newCases.put(read, body, therapist, request.getHeader("Idempotency-Key"));
        ObjectNode answer = JsonMapper.shared().createObjectNode().put("episode", made.episodeId());
        return Json.made(made.now(), "/api/v1/cases/" + made.episodeId(), answer);
    }

    @PutMapping("/api/v1/cases/{episode}")
    ResponseEntity<byte[]> change(@PathVariable String episode, HttpServletRequest request) {
        byte[] body = Bodies.read(request, YamlDocument.MAX_BYTES, FORMS);
        Chart chart = desk.open(episode);
        CaseText text = CaseText.of(chart, cases);
        Versions.demand(request, text.version());
        CaseFiles.read(body, "case");
        ObjectNode sent = (ObjectNode) YamlDocument.read("case", body).root();
        var mistakes = text.aboutThePerson(sent);
        if (!mistakes.isEmpty()) {
            throw new ProblemException(
                    HttpStatus.UNPROCESSABLE_CONTENT, "what was sent has mistakes; nothing was changed", mistakes);
        }
        Map<Section, ObjectNode> changes = text.changes(sent);
        Saving<Map<Section, SectionRecord>> saving = chart.saveAll(text.versions(), changes);
        if (saving instanceof Saving.Stale) {
            throw Versions.stale();
        }
        ObjectNode answer = JsonMapper.shared().createObjectNode();
        var changed = answer.putArray("changed");
        changes.keySet().forEach(section -> changed.add(section.key()));
        return Json.versioned(Versions.tag(CaseText.of(chart, cases).version() + "-yaml"), answer);
    }
}
