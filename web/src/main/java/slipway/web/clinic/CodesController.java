package slipway.web.clinic;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import slipway.care.record.Saving;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.codes.ClinicCodes;
import slipway.care.record.codes.CodeFiles;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.codes.CodeSet;
import slipway.web.episode.Desk;
import slipway.web.shell.Area;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;

/**
 * The diagnosis codes of the clinic: which are in use, and a file of them: upload, what it would change, confirm. Nothing
 * is kept between the three; the file travels with the page.
 */
@Controller
class CodesController {
    private static final Words WORDS = Words.beside(CodesController.class, Language.EN);
    private static final String PAGE = "/clinic/codes";

    private final Desk desk;
    private final Pages pages;

    CodesController(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    @GetMapping(PAGE)
    String codes(HttpServletRequest request, Model model) {
        return show(Optional.empty(), List.of(), request, model);
    }

    /** What the file would change. */
    @PostMapping(PAGE)
    String preview(
            @ModelAttribute CodesForm form, HttpServletRequest request, HttpServletResponse response, Model model) {
        CodeSet now = book().inUse(clinicId());
        CodesForm.Reading reading = form.read(now, WORDS);
        if (!reading.mistakes().isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return show(Optional.empty(), reading.mistakes(), request, model);
        }
        return show(Optional.of(CodesView.of(now, reading.set())), List.of(), request, model);
    }

    /** Loads what was shown. */
    @PostMapping(PAGE + "/load")
    String load(@ModelAttribute CodesForm form, HttpServletRequest request, HttpServletResponse response, Model model) {
        CodeSet now = book().inUse(clinicId());
        CodesForm.Reading reading = form.read(now, WORDS);
        if (!reading.mistakes().isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return show(Optional.empty(), reading.mistakes(), request, model);
        }
        if (book().load(CodeFiles.of(reading.set()), form.version(), desk.act()) instanceof Saving.Stale) {
            response.setStatus(HttpStatus.CONFLICT.value());
            return show(
                    Optional.of(CodesView.of(now, reading.set())), List.of(WORDS.get("codes.stale")), request, model);
        }
        Notices.put(request, WORDS.get("codes.loaded", reading.set().entries().size()));
        return "redirect:" + PAGE;
    }

    private ClinicCodes book() {
        return desk.records().codes();
    }

    private static String clinicId() {
        return Pages.staff().clinicId();
    }

    private String show(Optional<CodesView> preview, List<String> mistakes, HttpServletRequest request, Model model) {
        Map<String, String> names = desk.records().staff().list(clinicId()).stream()
                .collect(Collectors.toMap(StaffAccount::id, StaffAccount::displayName));
        model.addAttribute("page", pages.page(request, Area.CLINIC, WORDS.get("codes.title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("names", names);
        model.addAttribute("loads", book().loads(clinicId()));
        model.addAttribute("inUse", book().inUse(clinicId()));
        model.addAttribute("preview", preview);
        model.addAttribute("wrong", mistakes);
        return "clinic/codes";
    }
}
