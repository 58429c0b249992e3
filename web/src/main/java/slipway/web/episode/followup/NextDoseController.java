package slipway.web.episode.followup;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import slipway.care.follow.HomeSetting;
import slipway.care.record.NotThere;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Verdict;
import slipway.web.episode.Desk;
import slipway.web.episode.Step;
import slipway.web.episode.StepViews;
import slipway.web.episode.attempt.Sheets;
import slipway.web.episode.followup.NextDoseForm.Mistake;
import slipway.web.episode.home.HomeCourse;
import slipway.web.episode.home.HomeCourse.Home;
import slipway.web.episode.plan.SetDoses;
import slipway.web.form.FormView;
import slipway.web.shell.Notices;
import tools.jackson.databind.json.JsonMapper;

/** What the therapist makes of a proposed next dose: taken, changed or refused, in force and on the sheet at once. */
@Controller
class NextDoseController {
    private final Desk desk;
    private final HomeCourse course;
    private final NextDoses doses;
    private final Sheets sheets;
    private final StepViews views;

    NextDoseController(Desk desk, HomeCourse course, NextDoses doses, Sheets sheets, StepViews views) {
        this.desk = desk;
        this.course = course;
        this.doses = doses;
        this.sheets = sheets;
        this.views = views;
    }

    @PostMapping("/episodes/{id}/doses")
    String decide(
            @PathVariable String id,
            @ModelAttribute NextDoseForm given,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Chart chart = desk.open(id);
        Home home = course.home(chart).orElseThrow(() -> new NotThere("plan at home", id));
        Optional<NextDoseRow> row = doses.rows(chart, home, Optional.empty()).stream()
                .filter(each -> each.id().equals(given.exercise()))
                .findFirst();
        if (row.isEmpty() || !row.get().proposed().words().equals(given.proposed())) {
            Notices.put(request, FollowStep.WORDS.get("dose.stale"));
            return "redirect:/episodes/" + id + "/follow";
        }
        List<Mistake> mistakes = decide(chart, home, row.get(), given);
        if (mistakes.isEmpty()) {
            Notices.put(request, FollowStep.WORDS.get("dose.done." + given.action()));
            return "redirect:/episodes/" + id + "/follow";
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        model.addAttribute("typed", Optional.of(new NextDoses.Typed(given, mistakes)));
        var form = new FormView(JsonMapper.shared().createObjectNode(), List.of());
        return views.show(Step.FOLLOW, chart, form, 0, request, model);
    }

    private List<Mistake> decide(Chart chart, Home home, NextDoseRow row, NextDoseForm given) {
        return switch (given.action()) {
            case "accept" -> set(chart, home, row, given, Verdict.ACCEPT, row.proposed());
            case "change" -> change(chart, home, row, given);
            case "refuse" -> refuse(chart, home, row, given);
            default -> throw new NotThere("action", given.action());
        };
    }

    private List<Mistake> change(Chart chart, Home home, NextDoseRow row, NextDoseForm given) {
        NextDoseForm.Reading reading = given.setting(row.proposed().sets());
        var mistakes = new ArrayList<>(reading.mistakes());
        if (given.reason().isEmpty()) {
            mistakes.add(new Mistake("reason", FollowStep.WORDS.get("dose.reason")));
        }
        return mistakes.isEmpty()
                ? set(chart, home, row, given, Verdict.CHANGE, reading.setting().orElseThrow())
                : mistakes;
    }

    private List<Mistake> set(
            Chart chart, Home home, NextDoseRow row, NextDoseForm given, Verdict verdict, HomeSetting setting) {
        if (row.widens() && !given.tried().equals("yes")) {
            return List.of(new Mistake("tried", FollowStep.WORDS.get("dose.tried.needed")));
        }
        chart.decisions()
                .add(
                        SetDoses.subject(home.plan(), row.id()),
                        verdict,
                        row.proposed().words(),
                        verdict == Verdict.CHANGE ? setting.words() : "",
                        given.reason());
        Sheets.Choice choice = Sheets.Choice.read(
                        chart.person().details().language().code(), "a4", "normal")
                .orElseThrow();
        sheets.make(chart, home.plan(), course.visit(home), home.exercises(), choice);
        return List.of();
    }

    private static List<Mistake> refuse(Chart chart, Home home, NextDoseRow row, NextDoseForm given) {
        if (given.reason().isEmpty()) {
            return List.of(new Mistake("reason", FollowStep.WORDS.get("dose.reason")));
        }
        chart.decisions()
                .add(
                        SetDoses.subject(home.plan(), row.id()),
                        Verdict.REFUSE,
                        row.proposed().words(),
                        "",
                        given.reason());
        return List.of();
    }
}
