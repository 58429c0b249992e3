package slipway.web.validity;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.response.calibration.Calibration;
import slipway.web.shell.Area;
import slipway.web.shell.Pages;

/** What the records of this clinic say: how often each rule matched, and whether predicted chances came true. */
@Controller
class RecordsController {
    static final List<String> NAMES = List.of("rules", "calibration");

    private static final Words WORDS = Words.beside(RecordsController.class, Language.EN);

    private final Pages pages;
    private final Tallies tallies;

    RecordsController(Pages pages, Tallies tallies) {
        this.pages = pages;
        this.tallies = tallies;
    }

    @GetMapping("/validity/rules")
    String rules(HttpServletRequest request, Model model) {
        model.addAttribute("rules", RuleRow.list());
        return show("rules", request, model);
    }

    @GetMapping("/validity/calibration")
    String calibration(HttpServletRequest request, Model model) {
        model.addAttribute("least", Calibration.leastWeeks());
        return show("calibration", request, model);
    }

    /** Counts the records of the clinic anew, or breaks that off. */
    @PostMapping("/validity/count")
    String count(@RequestParam String page, @RequestParam(defaultValue = "") String stop) {
        String clinic = Pages.staff().clinicId();
        if (stop.isEmpty()) {
            tallies.start(clinic);
        } else {
            tallies.cancel(clinic);
        }
        return "redirect:/validity/" + (NAMES.contains(page) ? page : NAMES.get(0));
    }

    private String show(String name, HttpServletRequest request, Model model) {
        model.addAttribute("page", pages.page(request, Area.VALIDITY, WORDS.get("report." + name)));
        model.addAttribute("t", WORDS);
        model.addAttribute("name", name);
        model.addAttribute("links", ValidityController.links());
        model.addAttribute("counting", tallies.of(Pages.staff().clinicId()));
        return "validity/" + name;
    }
}
