package slipway.web.intake;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.NotThere;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.chart.Chart;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Cases;
import slipway.web.episode.Desk;
import slipway.web.episode.attempt.PatientCodes;
import slipway.web.shell.Area;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;
import slipway.web.shell.QrCode;
import slipway.web.told.FirstVisit;

/** Makes the code for the questions before the first visit, and takes it back. */
@Controller
class CodeController {
    private static final Words WORDS = IntakeView.words(Language.EN);

    private final Desk desk;
    private final Cases cases;
    private final PatientCodes codes;
    private final Pages pages;

    CodeController(Desk desk, Cases cases, PatientCodes codes, Pages pages) {
        this.desk = desk;
        this.cases = cases;
        this.codes = codes;
        this.pages = pages;
    }

    /** A slip to print or to copy from; its address is shown now and never again. */
    @PostMapping("/episodes/{id}/intake")
    String make(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String year,
            HttpServletRequest request,
            Model model) {
        Chart chart = desk.open(id);
        if (!FirstVisit.isAhead(chart)) {
            Notices.put(request, WORDS.get("slip.over"));
            return back(id);
        }
        PatientCodes.Intake code = codes.intake(id, year.equals("yes"), request);
        Language language = chart.person().details().language();
        model.addAttribute("page", pages.page(request, Area.PEOPLE, WORDS.get("slip.title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("s", IntakeView.words(language));
        model.addAttribute("language", language);
        model.addAttribute("code", code);
        model.addAttribute("qr", QrCode.of(code.address()));
        model.addAttribute("clinic", cases.clinic(chart));
        model.addAttribute("name", chart.person().details().name());
        model.addAttribute("episodeId", id);
        return "intake/slip";
    }

    @PostMapping("/episodes/{id}/intake/{link}/revoke")
    String revoke(@PathVariable String id, @PathVariable String link, HttpServletRequest request) {
        desk.open(id);
        if (desk.records().links().list(id, desk.act()).stream()
                .noneMatch(each -> each.id().equals(link) && each.purpose() == LinkPurpose.INTAKE)) {
            throw new NotThere("code", link);
        }
        desk.records().links().revoke(link, desk.act());
        Notices.put(request, WORDS.get("slip.revoked"));
        return back(id);
    }

    private static String back(String id) {
        return "redirect:/episodes/" + id + "/history";
    }
}
