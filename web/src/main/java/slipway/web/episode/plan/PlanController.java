package slipway.web.episode.plan;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanState;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.chart.Verdict;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.documents.words.Words;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Cases;
import slipway.web.episode.Desk;
import slipway.web.episode.EpisodeHead;
import slipway.web.episode.Heads;
import slipway.web.episode.Step;
import slipway.web.shell.Area;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the therapist does with a proposed plan: take it, change it, refuse it, look at an earlier one. */
@Controller
class PlanController {
    private static final Words WORDS = Words.beside(PlanController.class, Language.EN);

    private final Desk desk;
    private final Heads heads;
    private final Pages pages;
    private final Cases cases;

    PlanController(Desk desk, Heads heads, Pages pages, Cases cases) {
        this.desk = desk;
        this.heads = heads;
        this.pages = pages;
        this.cases = cases;
    }

    /** Takes the plan as proposed, with the ceilings of the form. */
    @PostMapping("/episodes/{id}/plan/accept")
    String accept(@PathVariable String id, @RequestParam String digest, HttpServletRequest request) {
        Chart chart = desk.open(id);
        Optional<Assembly.Complete> whole = cases.assemble(chart).complete();
        if (whole.isEmpty() || !Cases.digest(whole.get().text()).equals(digest)) {
            Notices.put(request, WORDS.get("accept.stale"));
            return back(id);
        }
        Ceilings.Reading ceilings = Ceilings.read(request.getParameterMap(), cases.visit(whole.get()));
        if (!ceilings.mistakes().isEmpty()) {
            Notices.put(request, WORDS.get("accept.ceiling", String.join("; ", ceilings.mistakes())));
            return back(id);
        }
        PlanVersion kept = chart.plans().add(PlanDrafts.of(cases, chart, whole.get(), ceilings.content()));
        chart.plans().move(kept.number(), PlanState.PROPOSED, PlanState.ACCEPTED);
        chart.decisions().add("plan/" + kept.number(), Verdict.ACCEPT, "", "", "");
        Notices.put(request, WORDS.get("accept.done", kept.number()));
        return "redirect:/episodes/" + id + "/try";
    }

    /** Adds an exercise to the therapist's picks, or takes it off, or refuses it with a reason. */
    @PostMapping("/episodes/{id}/plan/choices")
    String choose(
            @PathVariable String id,
            @RequestParam String exercise,
            @RequestParam String action,
            @RequestParam(defaultValue = "") String reason,
            @RequestParam long version,
            HttpServletRequest request) {
        Chart chart = desk.open(id);
        if (Catalogue.bundled().find(exercise).isEmpty()) {
            throw new NotThere("exercise", exercise);
        }
        if (action.equals("refuse") && reason.isBlank()) {
            Notices.put(request, WORDS.get("refuse.reason"));
            return back(id);
        }
        ObjectNode content = chart.section(Section.CHOICES).content();
        switch (action) {
            case "pick" -> pick(content, exercise);
            case "refuse" -> refuse(content, exercise, reason.strip());
            case "undo" -> drop(content, exercise);
            default -> throw new NotThere("action", action);
        }
        Saving<SectionRecord> saving = chart.save(Section.CHOICES, version, content);
        if (saving instanceof Saving.Stale) {
            Notices.put(request, WORDS.get("choices.stale"));
            return back(id);
        }
        Verdict verdict = action.equals("refuse") ? Verdict.REFUSE : Verdict.CHANGE;
        chart.decisions()
                .add(
                        "plan/exercise/" + exercise,
                        verdict,
                        exercise,
                        action,
                        reason.isBlank() ? action : reason.strip());
        Notices.put(request, WORDS.get("choices." + action));
        return back(id);
    }

    /** An earlier version as it was, beside what the same inputs give now. */
    @GetMapping("/episodes/{id}/plans/{number}")
    String version(@PathVariable String id, @PathVariable int number, HttpServletRequest request, Model model) {
        Chart chart = desk.open(id);
        PlanVersion version =
                chart.plans().find(number).orElseThrow(() -> new NotThere("plan", String.valueOf(number)));
        EpisodeHead head = heads.of(chart);
        model.addAttribute("page", pages.page(request, Area.PEOPLE, WORDS.get("version.title", number)));
        model.addAttribute("head", head);
        model.addAttribute("step", Step.PLAN);
        model.addAttribute("t", WORDS);
        model.addAttribute("version", version);
        Optional<Assembly.Complete> recorded = cases.assemble(chart).complete();
        model.addAttribute("recorded", recorded.isPresent());
        model.addAttribute("rows", PlanDrafts.compare(cases, version, recorded));
        model.addAttribute("changed", PlanChange.of(chart, version));
        model.addAttribute("set", SetDoses.list(chart, version));
        return "episode/plan-version";
    }

    private static void pick(ObjectNode content, String exercise) {
        drop(content, exercise);
        content.withObject("/choices").withArray("/exercises").add(exercise);
    }

    private static void refuse(ObjectNode content, String exercise, String reason) {
        drop(content, exercise);
        content.withObject("/choices")
                .withArray("/refused")
                .addObject()
                .put("exercise", exercise)
                .put("reason", reason);
    }

    private static void drop(ObjectNode content, String exercise) {
        ObjectNode choices = content.withObject("/choices");
        if (choices.get("exercises") instanceof ArrayNode picked) {
            picked.removeIf(each -> each.asString("").equals(exercise));
            removeEmpty(choices, "exercises", picked);
        }
        if (choices.get("refused") instanceof ArrayNode refused) {
            refused.removeIf(each -> each.path("exercise").asString("").equals(exercise));
            removeEmpty(choices, "refused", refused);
        }
    }

    private static void removeEmpty(ObjectNode choices, String key, ArrayNode list) {
        if (list.isEmpty()) {
            choices.remove(key);
        }
    }

    private static String back(String id) {
        return "redirect:/episodes/" + id + "/plan";
    }
}
