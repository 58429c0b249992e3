package slipway.web.patient;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.door.PatientLanguage;
import slipway.web.shell.Page;
import slipway.web.shell.Pages;
import tools.jackson.databind.json.JsonMapper;

/** What lets the pages work on a phone without network: the worker that keeps them, and how they are put on its screen. */
@Controller
class OfflineController {
    private static final List<String> KEPT = List.of("slipway.css", "mark.svg", "outbox.js", "patient.js");
    private static final MediaType SCRIPT = new MediaType("text", "javascript", StandardCharsets.UTF_8);
    private static final MediaType MANIFEST = new MediaType("application", "manifest+json", StandardCharsets.UTF_8);

    private final Pages pages;
    private final String program = resource("/slipway/web/assets/outbox.js") + resource("worker.js");

    OfflineController(Pages pages) {
        this.pages = pages;
    }

    /** The worker. It looks after the patient's pages only. */
    @GetMapping("/home/worker.js")
    ResponseEntity<String> worker(HttpServletRequest request) {
        Page page = pages.pageApart(request, "");
        String assets = KEPT.stream().map(file -> '"' + page.asset(file) + '"').collect(Collectors.joining(","));
        return ResponseEntity.ok()
                .contentType(SCRIPT)
                .header("Service-Worker-Allowed", "/home")
                .body("const ASSETS = [" + assets + "];\n" + program);
    }

    @GetMapping("/home/manifest.webmanifest")
    ResponseEntity<String> manifest(HttpServletRequest request) {
        Language language = PatientLanguage.ofStranger(request);
        Words words = PatientViews.words(language);
        Page page = pages.pageApart(request, "");
        Map<String, Object> manifest = Map.of(
                "name", words.get("title"),
                "short_name", words.get("title"),
                "lang", language.code(),
                "start_url", "/home",
                "scope", "/home",
                "display", "standalone",
                "background_color", "#faf8f3",
                "theme_color", "#faf8f3",
                "icons", List.of(Map.of("src", page.asset("mark.svg"), "sizes", "any", "type", "image/svg+xml")));
        return ResponseEntity.ok()
                .contentType(MANIFEST)
                .body(JsonMapper.shared().writeValueAsString(manifest));
    }

    private static String resource(String name) {
        try (InputStream stream = OfflineController.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(stream, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }
}
