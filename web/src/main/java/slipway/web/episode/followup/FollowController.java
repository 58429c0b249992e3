package slipway.web.episode.followup;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.chart.Verdict;
import slipway.care.record.follow.Alert;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Desk;
import slipway.web.episode.Step;
import slipway.web.episode.StepViews;
import slipway.web.episode.attempt.PatientCodes;
import slipway.web.episode.home.HomeCourse;
import slipway.web.form.FormView;
import slipway.web.shell.Notices;
import slipway.web.shell.QrCode;
import tools.jackson.databind.json.JsonMapper;

/** Takes alerts, lets a person go on after a stop, gives and takes back the person's way in. */
@Controller
public class FollowController {
    private static final Words WORDS = Words.beside(FollowController.class, Language.EN);
    private static final int LEAST_WORDS = 5;

    private final Desk desk;
    private final StepViews views;
    private final PatientCodes codes;

    FollowController(Desk desk, StepViews views, PatientCodes codes) {
        this.desk = desk;
        this.views = views;
        this.codes = codes;
    }

    /**
     * A new code for the person at home, shown once.
     *
     * @param address where to open it
     */
    public record Fresh(String address, QrCode code) {}

    /** Says what was done about an alert, and whether the person may go on. */
    @PostMapping("/episodes/{id}/alerts/{alert}")
    String take(
            @PathVariable String id,
            @PathVariable String alert,
            @RequestParam(defaultValue = "") String done,
            @RequestParam(defaultValue = "") String goOn,
            HttpServletRequest request) {
        Chart chart = desk.open(id);
        if (chart.checkIns().alerts().stream().noneMatch(each -> each.id().equals(alert))) {
            throw new NotThere("alert", alert);
        }
        if (done.strip().length() < LEAST_WORDS) {
            Notices.put(request, WORDS.get("alert.words"));
            return back(id);
        }
        Saving<Alert> saving = desk.records().alerts().acknowledge(alert, done.strip(), desk.act());
        if (saving instanceof Saving.Stale) {
            Notices.put(request, WORDS.get("alert.stale"));
            return back(id);
        }
        if (goOn.equals("yes")) {
            chart.decisions().add(HomeCourse.RELEASE, Verdict.ACCEPT, "", "", done.strip());
        }
        Notices.put(request, WORDS.get(goOn.equals("yes") ? "alert.released" : "alert.taken"));
        return back(id);
    }

    /** Lets a person go on whose exercise rests until it was looked at, where no alert stands. */
    @PostMapping("/episodes/{id}/go-on")
    String goOn(@PathVariable String id, @RequestParam(defaultValue = "") String done, HttpServletRequest request) {
        Chart chart = desk.open(id);
        boolean words = done.strip().length() >= LEAST_WORDS;
        if (words) {
            chart.decisions().add(HomeCourse.RELEASE, Verdict.ACCEPT, "", "", done.strip());
        }
        Notices.put(request, WORDS.get(words ? "alert.released" : "alert.words"));
        return back(id);
    }

    /** Makes a code for the plan at home; the address is shown now and never again. */
    @PostMapping("/episodes/{id}/links")
    String link(@PathVariable String id, HttpServletRequest request, Model model) {
        Chart chart = desk.open(id);
        PlanVersion plan = chart.plans().released().orElseThrow(() -> new NotThere("plan at home", id));
        String address = codes.guide(id, plan, request);
        model.addAttribute("fresh", Optional.of(new Fresh(address, QrCode.of(address))));
        return views.show(
                Step.FOLLOW, chart, new FormView(JsonMapper.shared().createObjectNode(), List.of()), 0, request, model);
    }

    @PostMapping("/episodes/{id}/links/{link}/revoke")
    String revoke(@PathVariable String id, @PathVariable String link, HttpServletRequest request) {
        desk.open(id);
        if (desk.records().links().list(id, desk.act()).stream()
                .noneMatch(each -> each.id().equals(link))) {
            throw new NotThere("code", link);
        }
        desk.records().links().revoke(link, desk.act());
        Notices.put(request, WORDS.get("link.revoked"));
        return back(id);
    }

    private static String back(String id) {
        return "redirect:/episodes/" + id + "/follow";
    }
}
