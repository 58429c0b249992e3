package slipway.web.episode.measure;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.chart.Chart;
import slipway.care.record.follow.Goal;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.exercises.yaml.Mistake;
import slipway.reasoning.course.GoalCheck;
import slipway.web.episode.Cases;
import slipway.web.episode.Desk;
import slipway.web.episode.Step;
import slipway.web.episode.StepViews;
import slipway.web.form.FormView;
import slipway.web.shell.Notices;
import tools.jackson.databind.node.ObjectNode;

/** Takes scores and goals. */
@Controller
class MeasureController {
    private static final Words WORDS = Words.beside(MeasureController.class, Language.EN);
    private static final Set<String> STATES = Set.of("open", "reached", "dropped");

    private final Desk desk;
    private final Cases cases;
    private final StepViews views;

    MeasureController(Desk desk, Cases cases, StepViews views) {
        this.desk = desk;
        this.cases = cases;
        this.views = views;
    }

    /** A new score; one that corrects another names it. */
    @PostMapping("/episodes/{id}/scores")
    String score(
            @PathVariable String id,
            @ModelAttribute ScoreForm form,
            @RequestParam(defaultValue = "") String corrects,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Chart chart = desk.open(id);
        ScoreForm.Reading reading = form.read(cases.today(), WORDS);
        if (!reading.mistakes().isEmpty()) {
            return again(chart, form.fields(), reading.mistakes(), request, response, model);
        }
        if (corrects.isBlank()) {
            chart.measures().add(form.measure(), reading.day().orElseThrow(), reading.body());
        } else {
            known(chart, corrects);
            chart.measures().correct(corrects, reading.day().orElseThrow(), reading.body());
        }
        Notices.put(request, WORDS.get("score.kept"));
        return back(id);
    }

    @PostMapping("/episodes/{id}/goals")
    String goal(
            @PathVariable String id,
            @ModelAttribute GoalForm form,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Chart chart = desk.open(id);
        GoalCheck.Verdict verdict = GoalCheck.of(form.draft("new"), cases.today());
        if (verdict.goal().isEmpty()) {
            List<Mistake> mistakes =
                    verdict.flaws().stream().map(GoalForm::mistake).toList();
            return again(chart, form.fields(), mistakes, request, response, model);
        }
        var goal = verdict.goal().get();
        chart.goals().add(goal.sentence(), Optional.of(form.measure()), form.kept(), Optional.of(goal.due()));
        String hints = String.join(
                " ", verdict.flaws().stream().map(GoalCheck.Flaw::text).toList());
        Notices.put(request, hints.isEmpty() ? WORDS.get("goal.kept") : WORDS.get("goal.kept.hint", hints));
        return back(id);
    }

    /** Closes a goal, or opens it again. */
    @PostMapping("/episodes/{id}/goals/{goal}")
    String state(
            @PathVariable String id,
            @PathVariable String goal,
            @RequestParam String state,
            @RequestParam long version,
            HttpServletRequest request) {
        Chart chart = desk.open(id);
        Goal now = chart.goals().list().stream()
                .filter(each -> each.id().equals(goal))
                .findFirst()
                .orElseThrow(() -> new NotThere("goal", goal));
        if (!STATES.contains(state)) {
            throw new NotThere("state of a goal", state);
        }
        Saving<Goal> saving = chart.goals()
                .change(new Goal(
                        now.id(),
                        now.episodeId(),
                        now.words(),
                        now.measureId(),
                        now.target(),
                        now.due(),
                        state,
                        version,
                        now.changedAt(),
                        now.changedBy()));
        Notices.put(request, WORDS.get(saving instanceof Saving.Stale ? "goal.stale" : "goal.kept"));
        return back(id);
    }

    private static void known(Chart chart, String entryId) {
        if (chart.measures().list().stream().noneMatch(entry -> entry.id().equals(entryId))) {
            throw new NotThere("score", entryId);
        }
    }

    private String again(
            Chart chart,
            ObjectNode fields,
            List<Mistake> mistakes,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return views.show(Step.MEASURE, chart, new FormView(fields, mistakes), 0, request, model);
    }

    private static String back(String id) {
        return "redirect:/episodes/" + id + "/measure";
    }
}
