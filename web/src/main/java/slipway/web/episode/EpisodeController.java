package slipway.web.episode;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionCheck;
import slipway.care.record.content.SectionRecord;
import slipway.care.record.draft.Draft;
import slipway.exercises.yaml.Mistake;
import slipway.web.form.FormReader;
import slipway.web.form.FormView;
import slipway.web.shell.Area;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;
import slipway.web.told.Overwriting;
import slipway.web.told.Taking;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The steps of an episode: shows them and saves what their forms edit. */
@Controller
class EpisodeController {
    private final Desk desk;
    private final Heads heads;
    private final Pages pages;
    private final Differences differences;
    private final StepViews views;

    EpisodeController(Desk desk, Heads heads, Pages pages, Differences differences, StepViews views) {
        this.desk = desk;
        this.heads = heads;
        this.pages = pages;
        this.differences = differences;
        this.views = views;
    }

    /** The first step with nothing recorded yet. */
    @GetMapping("/episodes/{id}")
    String open(@PathVariable String id) {
        Chart chart = desk.open(id);
        Step first = heads.of(chart).marks().stream()
                .filter(mark -> !mark.sign().equals("✓"))
                .map(EpisodeHead.Mark::step)
                .findFirst()
                .orElse(Step.FOLLOW);
        return "redirect:/episodes/" + id + "/" + first.key();
    }

    @GetMapping("/episodes/{id}/{step}")
    String show(@PathVariable String id, @PathVariable String step, HttpServletRequest request, Model model) {
        StepPage page = page(step);
        Chart chart = desk.open(id);
        Optional<SectionRecord> kept = page.step().section().map(chart::section);
        Optional<Draft> draft = kept.flatMap(
                record -> desk.records().drafts().find(id, record.section().key(), desk.act()));
        model.addAttribute("draft", draft);
        ObjectNode content = draft.map(Draft::content)
                .map(EpisodeController::parsed)
                .or(() -> kept.map(SectionRecord::content))
                .orElseGet(EpisodeController::empty);
        // A draft keeps the version that it was begun on: if somebody saved meanwhile, saving it shows both.
        long version = draft.map(Draft::baseVersion)
                .or(() -> kept.map(SectionRecord::version))
                .orElse(0L);
        return views.show(page.step(), chart, new FormView(content, List.of()), version, request, model);
    }

    @PostMapping("/episodes/{id}/sections/{section}")
    String save(
            @PathVariable String id,
            @PathVariable String section,
            @RequestParam long version,
            @RequestParam(defaultValue = "") String then,
            @RequestParam(defaultValue = "") String take,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Section edited = Section.find(section).orElseThrow(() -> new NotThere("section", section));
        StepPage page = page(Step.editing(edited).key());
        Chart chart = desk.open(id);
        ObjectNode sent = page.adjust(chart, FormReader.read(request.getParameterMap(), edited.keys()));
        List<String> taken = take.isEmpty() ? List.of() : Taking.into(sent, edited, take, chart);
        ObjectNode why = FormReader.read(request.getParameterMap(), List.of(Overwriting.WHY));
        List<Overwriting> otherwise =
                Overwriting.of(chart.section(edited).content(), sent, why.withObject("/" + Overwriting.WHY), chart);
        List<Mistake> mistakes = mistakes(page, chart, edited, sent, otherwise);
        if (!mistakes.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return views.show(page.step(), chart, new FormView(sent.setAll(why), mistakes), version, request, model);
        }
        Saving<SectionRecord> saving = chart.save(edited, version, sent);
        if (saving instanceof Saving.Stale<SectionRecord> stale) {
            response.setStatus(HttpStatus.CONFLICT.value());
            return stale(page, chart, stale.current(), sent, why, request, model);
        }
        page.saved(chart);
        otherwise.forEach(each -> each.note(chart, edited));
        if (!taken.isEmpty()) {
            Taking.note(chart, edited, taken);
        }
        Notices.put(request, heads.of(chart).text(taken.isEmpty() ? "saved" : "taken"));
        Step next = then.equals("next") ? page.step().next() : page.step();
        String field = taken.size() == 1 ? "#" + taken.get(0) : "";
        return "redirect:/episodes/" + id + "/" + next.key() + field;
    }

    private static List<Mistake> mistakes(
            StepPage page, Chart chart, Section edited, ObjectNode sent, List<Overwriting> otherwise) {
        ObjectNode rest = empty();
        chart.sections().values().forEach(each -> rest.setAll(each.content()));
        var mistakes =
                new ArrayList<Mistake>(SectionCheck.of(edited, sent, rest).mistakes());
        mistakes.addAll(page.check(chart, sent));
        otherwise.forEach(
                each -> each.mistake(StepViews.TOLD.get("told.why.missing"), StepViews.TOLD.get("told.why.long"))
                        .ifPresent(mistakes::add));
        return mistakes;
    }

    private String stale(
            StepPage page,
            Chart chart,
            SectionRecord current,
            ObjectNode sent,
            ObjectNode why,
            HttpServletRequest request,
            Model model) {
        EpisodeHead head = heads.of(chart);
        model.addAttribute("page", pages.page(request, Area.PEOPLE, head.text("stale.title")));
        model.addAttribute("head", head);
        model.addAttribute("step", page.step());
        model.addAttribute("by", differences.nameOf(current.changedBy()));
        model.addAttribute("current", current);
        model.addAttribute("changes", Differences.between(current.content(), sent));
        model.addAttribute("fields", Differences.fields(sent.setAll(why)));
        return "episode/stale";
    }

    private StepPage page(String key) {
        return Step.find(key).map(views::page).orElseThrow(() -> new NotThere("step", key));
    }

    private static ObjectNode parsed(String json) {
        return (ObjectNode) JsonMapper.shared().readTree(json);
    }

    private static ObjectNode empty() {
        return JsonMapper.shared().createObjectNode();
    }
}
