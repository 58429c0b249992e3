package slipway.web.validity;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import slipway.care.record.NotThere;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.form.Option;
import slipway.web.shell.Area;
import slipway.web.shell.Pages;

/** The reports on how well the program does. */
@Controller
class ValidityController {
    private static final Words WORDS = Words.beside(ValidityController.class, Language.EN);

    private final Pages pages;

    ValidityController(Pages pages) {
        this.pages = pages;
    }

    @GetMapping("/validity")
    String first(HttpServletRequest request, Model model) {
        return report(Reports.list().get(0).name(), request, model);
    }

    @GetMapping("/validity/{name}")
    String report(@PathVariable String name, HttpServletRequest request, Model model) {
        Reports.Report report = Reports.find(name).orElseThrow(() -> new NotThere("report", name));
        model.addAttribute("page", pages.page(request, Area.VALIDITY, report.title()));
        model.addAttribute("t", WORDS);
        model.addAttribute("name", name);
        model.addAttribute("html", report.html());
        model.addAttribute("links", links());
        return "validity/report";
    }

    @GetMapping("/validity/images/{file}")
    ResponseEntity<byte[]> picture(@PathVariable String file) {
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("image/svg+xml"))
                .cacheControl(CacheControl.maxAge(Duration.ofHours(1)).cachePrivate())
                .body(Reports.picture(file).orElseThrow(() -> new NotThere("picture", file)));
    }

    /** Everything that can be looked at here. */
    static List<Option> links() {
        return Stream.concat(Reports.list().stream().map(Reports.Report::name), RecordsController.NAMES.stream())
                .map(name -> new Option(name, WORDS.get("report." + name)))
                .toList();
    }
}
