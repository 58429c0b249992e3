package slipway.web.bench;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import slipway.care.bench.PostureReading;
import slipway.care.bench.Stance;
import slipway.documents.words.Words;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.exercises.yaml.NearestWord;
import slipway.web.shell.Area;
import slipway.web.shell.Page;
import slipway.web.shell.Pages;

/** The bench: a page, its answers while something is changed, and the answer as files. */
@Controller
class BenchController {
    private static final Words WORDS = Words.beside(BenchController.class, Language.EN);
    private static final int BAD_REQUEST = 400;

    private final Pages pages;
    private final BenchAnswers answers;
    private final BenchMotions motions;
    private final BenchRulers rulers;

    BenchController(Pages pages, BenchAnswers answers, BenchMotions motions, BenchRulers rulers) {
        this.pages = pages;
        this.answers = answers;
        this.motions = motions;
        this.rulers = rulers;
    }

    /** The whole page. What cannot be used is named on it, and the rest is answered. */
    @GetMapping("/bench")
    String bench(HttpServletRequest request, HttpServletResponse response, Model model) {
        BenchQuery query = BenchReader.read(request.getParameterMap(), WORDS);
        var mistakes = new ArrayList<>(query.mistakes());
        Optional<Exercise> exercise = exercise(query, mistakes);
        if (!mistakes.isEmpty()) {
            response.setStatus(BAD_REQUEST);
        }
        Page page = pages.page(request, Area.BENCH, WORDS.get("title"));
        model.addAttribute("page", page);
        model.addAttribute("t", WORDS);
        model.addAttribute("form", new BenchForm(query, WORDS));
        model.addAttribute("query", query);
        model.addAttribute("mistakes", mistakes);
        model.addAttribute("answer", answers.answer(query, BenchWish.WHOLE));
        model.addAttribute("ruler", rulers.of(query, BenchWish.WHOLE));
        model.addAttribute("motion", exercise.map(found -> motions.play(found, query, BenchWish.WHOLE)));
        model.addAttribute("exercises", Catalogue.bundled().list());
        model.addAttribute("address", BenchAddress.of(query));
        model.addAttribute("carried", BenchAddress.fields(query));
        model.addAttribute("basis", BenchExport.basis(WORDS));
        return "bench/page";
    }

    /** The parts of the page that change with a posture. */
    @GetMapping("/bench/answer")
    String answer(HttpServletRequest request, HttpServletResponse response, Model model) {
        BenchQuery query = BenchReader.read(request.getParameterMap(), WORDS);
        model.addAttribute("t", WORDS);
        model.addAttribute("mistakes", query.mistakes());
        if (!query.mistakes().isEmpty()) {
            response.setStatus(BAD_REQUEST);
            return "bench/mistakes";
        }
        model.addAttribute("address", BenchAddress.of(query));
        BenchWish wish = BenchWish.of(query.typed());
        model.addAttribute("answer", answers.answer(query, wish));
        model.addAttribute("ruler", rulers.of(query, wish));
        return "bench/answer";
    }

    /** An exercise as a motion, as a part of the page. */
    @GetMapping("/bench/motion")
    String motion(HttpServletRequest request, HttpServletResponse response, Model model) {
        BenchQuery query = BenchReader.read(request.getParameterMap(), WORDS);
        var mistakes = new ArrayList<>(query.mistakes());
        Optional<Exercise> exercise = exercise(query, mistakes);
        model.addAttribute("t", WORDS);
        if (exercise.isEmpty() && mistakes.isEmpty()) {
            mistakes.add(WORDS.get("mistake.exercise"));
        }
        if (exercise.isEmpty() || !mistakes.isEmpty()) {
            response.setStatus(BAD_REQUEST);
            model.addAttribute("mistakes", mistakes);
            return "bench/mistakes";
        }
        model.addAttribute("motion", motions.play(exercise.get(), query, BenchWish.of(query.typed())));
        return "bench/motion";
    }

    private static Optional<Exercise> exercise(BenchQuery query, List<String> mistakes) {
        String id = query.typed().getOrDefault("exercise", "");
        if (id.isEmpty()) {
            return Optional.empty();
        }
        Optional<Exercise> found = Catalogue.bundled().find(id);
        if (found.isEmpty()) {
            mistakes.add(NearestWord.complaint(
                    WORDS.get("word.exercise"), id, Catalogue.bundled().ids()));
        }
        return found;
    }

    @GetMapping("/bench/picture.svg")
    ResponseEntity<byte[]> picture(HttpServletRequest request) {
        BenchQuery query = BenchReader.read(request.getParameterMap(), WORDS);
        if (!query.mistakes().isEmpty()) {
            return refused(query);
        }
        String svg = BenchExport.picture(query, answers.answer(query, BenchWish.WHOLE), WORDS);
        return file("bench.svg", "image/svg+xml", svg);
    }

    @GetMapping("/bench/values.csv")
    ResponseEntity<byte[]> values(HttpServletRequest request) {
        BenchQuery query = BenchReader.read(request.getParameterMap(), WORDS);
        if (!query.mistakes().isEmpty()) {
            return refused(query);
        }
        var readings = new ArrayList<BenchExport.Read>();
        readings.add(read("A", query.first(), query));
        query.second().ifPresent(stance -> readings.add(read("B", stance, query)));
        return file("bench.csv", "text/csv;charset=UTF-8", BenchExport.csv(readings, WORDS));
    }

    private BenchExport.Read read(String letter, Stance stance, BenchQuery query) {
        return new BenchExport.Read(
                letter,
                stance.position().name(),
                PostureReading.of(stance.posture(), BenchAnswers.rest(), query.tract(), answers.body(query, false)));
    }

    private static ResponseEntity<byte[]> refused(BenchQuery query) {
        return ResponseEntity.badRequest()
                .contentType(MediaType.parseMediaType("text/plain;charset=UTF-8"))
                .body((String.join("\n", query.mistakes()) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private static ResponseEntity<byte[]> file(String name, String type, String content) {
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(type))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .body(content.getBytes(StandardCharsets.UTF_8));
    }
}
