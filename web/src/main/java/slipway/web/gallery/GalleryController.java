package slipway.web.gallery;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.loads.ExerciseLoads;
import slipway.care.record.NotThere;
import slipway.documents.words.Words;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.exercises.exercise.Purpose;
import slipway.mechanics.nerve.Tract;
import slipway.pictures.look.Look;
import slipway.web.form.Option;
import slipway.web.shell.Area;
import slipway.web.shell.Pages;

/** The gallery, the page of an exercise, and the writer. */
@Controller
class GalleryController {
    private static final Words WORDS = Words.beside(GalleryController.class, Language.EN);
    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml");
    private static final MediaType YAML = MediaType.parseMediaType("application/yaml;charset=UTF-8");

    private final Pages pages;

    GalleryController(Pages pages) {
        this.pages = pages;
    }

    /** All exercises, or those of a purpose whose name or pathway holds a word. */
    @GetMapping("/exercises")
    String gallery(
            @RequestParam(defaultValue = "") String purpose,
            @RequestParam(defaultValue = "") String text,
            HttpServletRequest request,
            Model model) {
        String word = text.strip().toLowerCase(Locale.ROOT);
        List<Exercise> found = Catalogue.bundled().list().stream()
                .filter(exercise ->
                        purpose.isBlank() || exercise.purpose().key().equals(purpose))
                .filter(exercise -> (exercise.name().in(Language.EN) + " " + exercise.id() + " "
                                + String.join(" ", exercise.use().tractKeys()))
                        .toLowerCase(Locale.ROOT)
                        .contains(word))
                .toList();
        model.addAttribute("page", pages.page(request, Area.EXERCISES, WORDS.get("title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("exercises", found);
        model.addAttribute("purpose", purpose);
        model.addAttribute("text", text);
        model.addAttribute(
                "purposes",
                Arrays.stream(Purpose.values())
                        .map(each -> new Option(
                                each.key(), WORDS.get("purpose." + each.key().replace(' ', '-'))))
                        .toList());
        return "gallery/gallery";
    }

    @GetMapping("/exercises/{id}")
    String one(@PathVariable String id, HttpServletRequest request, Model model) {
        Exercise exercise = exercise(id);
        model.addAttribute(
                "page", pages.page(request, Area.EXERCISES, exercise.name().in(Language.EN)));
        model.addAttribute("t", WORDS);
        model.addAttribute("exercise", exercise);
        model.addAttribute("levels", Draft.levels(exercise));
        model.addAttribute("loads", ExerciseLoads.of(exercise));
        model.addAttribute("bench", bench(exercise));
        return "gallery/exercise";
    }

    /** A picture of an exercise, or of one of its common errors. */
    @GetMapping("/exercises/{id}/picture.svg")
    ResponseEntity<byte[]> picture(
            @PathVariable String id,
            @RequestParam(defaultValue = "light") String look,
            @RequestParam(defaultValue = "-1") int error) {
        Exercise exercise = exercise(id);
        Look drawn = look.equals("dark") ? Look.dark() : Look.paper();
        Optional<String> svg = error < 0
                ? Optional.of(Pictures.movement(exercise, drawn, id))
                : Pictures.error(exercise, error, drawn, id);
        return ResponseEntity.ok()
                .contentType(SVG)
                .cacheControl(CacheControl.maxAge(Duration.ofHours(1)).cachePrivate())
                .body(svg.orElseThrow(() -> new NotThere("error", String.valueOf(error)))
                        .getBytes(StandardCharsets.UTF_8));
    }

    /** The file of an exercise. */
    @GetMapping("/exercises/{id}/file.yaml")
    ResponseEntity<byte[]> file(@PathVariable String id) {
        return download(id, Catalogue.bundledText(id).orElseThrow(() -> new NotThere("exercise", id)));
    }

    /** The writer, with the text of an exercise to start from. */
    @GetMapping("/exercises/writer")
    String writer(@RequestParam(defaultValue = "") String from, HttpServletRequest request, Model model) {
        String start = from.isBlank() ? Catalogue.bundled().list().get(0).id() : from;
        String text = Catalogue.bundledText(start).orElseThrow(() -> new NotThere("exercise", start));
        return show(Draft.of(text), request, model);
    }

    /** Checks a text; a script gets the answer alone, a form the whole page. */
    @PostMapping("/exercises/check")
    String check(
            @RequestParam(defaultValue = "") String text,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Draft draft = Draft.of(text);
        if (request.getHeader("HX-Request") != null) {
            model.addAttribute("t", WORDS);
            model.addAttribute("draft", draft);
            drawn(draft, model);
            return "gallery/checked";
        }
        if (!draft.mistakes().isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        return show(draft, request, model);
    }

    /** The text as a file, once it is good. */
    @PostMapping("/exercises/file")
    Object keep(
            @RequestParam(defaultValue = "") String text,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Draft draft = Draft.of(text);
        if (draft.exercise().isPresent()) {
            return download(draft.exercise().get().id(), text);
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return show(draft, request, model);
    }

    private String show(Draft draft, HttpServletRequest request, Model model) {
        model.addAttribute("page", pages.page(request, Area.EXERCISES, WORDS.get("writer")));
        model.addAttribute("t", WORDS);
        model.addAttribute("draft", draft);
        drawn(draft, model);
        return "gallery/writer";
    }

    private static void drawn(Draft draft, Model model) {
        model.addAttribute("light", draft.exercise().map(each -> Pictures.movement(each, Look.paper(), "draft")));
        model.addAttribute("loads", draft.exercise().map(ExerciseLoads::of).orElse(List.of()));
        model.addAttribute("dark", draft.exercise().map(each -> Pictures.movement(each, Look.dark(), "draft-dark")));
    }

    /** The question to the bench: the exercise on the first nerve that its file names. */
    private static String bench(Exercise exercise) {
        return exercise.use().modelledTracts().stream()
                        .findFirst()
                        .filter(tract -> tract != Tract.SCIATIC_TIBIAL)
                        .map(tract -> "tract=" + tract.key() + "&")
                        .orElse("")
                + "exercise=" + exercise.id();
    }

    private static ResponseEntity<byte[]> download(String id, String text) {
        return ResponseEntity.ok()
                .contentType(YAML)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(id + ".yaml")
                                .build()
                                .toString())
                .body(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Exercise exercise(String id) {
        return Catalogue.bundled().find(id).orElseThrow(() -> new NotThere("exercise", id));
    }
}
