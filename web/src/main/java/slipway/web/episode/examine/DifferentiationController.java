package slipway.web.episode.examine;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import slipway.care.record.Saving;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionCheck;
import slipway.care.record.content.SectionRecord;
import slipway.exercises.yaml.Mistake;
import slipway.web.episode.Desk;
import slipway.web.episode.Step;
import slipway.web.episode.StepViews;
import slipway.web.form.FormView;
import slipway.web.shell.Notices;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Takes a remote movement from the examination into the tolerance, where its test stands. */
@Controller
class DifferentiationController {
    private final Desk desk;
    private final StepViews views;

    DifferentiationController(Desk desk, StepViews views) {
        this.desk = desk;
        this.views = views;
    }

    @PostMapping("/episodes/{id}/differentiation")
    String record(@PathVariable String id, HttpServletRequest request, HttpServletResponse response, Model model) {
        Chart chart = desk.open(id);
        var given = Differentiation.read(request.getParameterMap());
        SectionRecord kept = chart.section(Section.TOLERANCE);
        List<Mistake> mistakes = given.missing(kept.content());
        if (mistakes.isEmpty()) {
            ObjectNode content = given.into(kept.content());
            mistakes = given.own(check(chart, content));
            if (mistakes.isEmpty()) {
                Saving<SectionRecord> saving = chart.save(Section.TOLERANCE, kept.version(), content);
                boolean stale = saving instanceof Saving.Stale;
                Notices.put(request, ExamineStep.WORDS.get(stale ? "differentiation.stale" : "differentiation.done"));
                return "redirect:/episodes/" + id + "/examine";
            }
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        model.addAttribute("differentiation", given.view(mistakes));
        SectionRecord examination = chart.section(Section.EXAMINATION);
        var form = new FormView(examination.content(), List.of());
        return views.show(Step.EXAMINE, chart, form, examination.version(), request, model);
    }

    private static List<Mistake> check(Chart chart, ObjectNode content) {
        ObjectNode rest = JsonMapper.shared().createObjectNode();
        chart.sections().values().forEach(each -> rest.setAll(each.content()));
        return new ArrayList<>(SectionCheck.of(Section.TOLERANCE, content, rest).mistakes());
    }
}
