package slipway.web.patient;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import slipway.care.record.chart.Chart;
import slipway.care.record.papers.StoredDocument;
import slipway.web.patient.PatientDoor.Opened;

/** The moving guide as a page: it closes with a stop and opens when a clinician lets the person go on. */
@Controller
class GuideController {
    /** The guide names its own style and script by their digests; nothing else runs in it. */
    private static final Pattern POLICY =
            Pattern.compile("http-equiv=\"Content-Security-Policy\" content=\"([^\"]{1,600})\"");

    private final PatientDoor door;
    private final HomeView view;

    GuideController(PatientDoor door, HomeView view) {
        this.door = door;
        this.view = view;
    }

    /** Asks how it is before it starts. */
    @GetMapping("/home/guide")
    String around(HttpServletRequest request, Model model) {
        Optional<Opened> opened = door.opened();
        return opened.isEmpty() ? "redirect:/p" : view.guide(opened.get(), request, model);
    }

    /** The guide itself, as it was made for the plan that is at home. */
    @GetMapping("/home/guide.html")
    ResponseEntity<byte[]> guide() {
        Optional<Opened> opened = door.opened();
        Optional<byte[]> bytes = opened.filter(found -> !view.locked(found)).flatMap(GuideController::newest);
        return bytes.map(GuideController::page)
                .orElseGet(() -> ResponseEntity.status(HttpStatus.SEE_OTHER)
                        .header(HttpHeaders.LOCATION, opened.isPresent() ? "/home" : "/p")
                        .build());
    }

    private static ResponseEntity<byte[]> page(byte[] html) {
        Matcher policy = POLICY.matcher(new String(html, StandardCharsets.UTF_8));
        // A guide without a policy of its own gets one in which it cannot do anything.
        String own =
                policy.find() ? policy.group(1).replace("&#39;", "'").replace("&quot;", "\"") : "default-src 'none'";
        return ResponseEntity.ok()
                .contentType(new MediaType(MediaType.TEXT_HTML, StandardCharsets.UTF_8))
                .header("Content-Security-Policy", own + "; frame-ancestors 'self'")
                .body(html);
    }

    /** Of the plan that is at home; a guide to an older one is not shown. */
    private static Optional<byte[]> newest(Opened opened) {
        Chart chart = opened.chart();
        return chart.documents().list().stream()
                .filter(document -> document.kind().equals("guide"))
                .filter(document -> document.planVersion()
                        .equals(OptionalInt.of(opened.home().plan().number())))
                .findFirst()
                .map(StoredDocument::id)
                .flatMap(chart.documents()::bytes);
    }
}
