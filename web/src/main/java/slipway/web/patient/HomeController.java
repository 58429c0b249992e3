package slipway.web.patient;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.documents.words.Words;
import slipway.web.door.CodeRates;
import slipway.web.door.PatientLanguage;
import slipway.web.door.Place;
import slipway.web.patient.PatientDoor.Opened;
import tools.jackson.databind.node.ObjectNode;

/** What the person at home sees and sends. Whatever goes wrong here, the emergency number stands on the page. */
@Controller
class HomeController {
    private static final String CLOSED = "redirect:/p";
    /** Tells a script under which id a report is kept. */
    private static final String KEPT = "X-Kept";

    private final PatientDoor door;
    private final HomeView view;
    private final Reports reports;

    HomeController(PatientDoor door, HomeView view, Reports reports) {
        this.door = door;
        this.view = view;
        this.reports = reports;
    }

    @GetMapping("/home")
    String home(HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<Opened> opened = door.opened();
        if (opened.isEmpty()) {
            return CLOSED;
        }
        PatientLanguage.keep(request, Place.HOME)
                .ifPresent(kept -> response.addHeader(HttpHeaders.SET_COOKIE, kept.toString()));
        return view.home(opened.get(), new Report(Map.of()), List.of(), request, model);
    }

    /**
     * What a phone asks before it sends.
     *
     * @param proof what a form must bring along
     * @param until when the code ends, in milliseconds since 1970
     */
    record State(String who, String proof, boolean locked, int plan, long until) {}

    @GetMapping("/home/state")
    ResponseEntity<State> state(HttpServletRequest request, CsrfToken proof) {
        return door.opened()
                .map(opened -> ResponseEntity.ok()
                        .contentType(MediaType.APPLICATION_JSON)
                        .body(new State(
                                view.who(opened),
                                proof.getToken(),
                                view.locked(opened),
                                opened.home().plan().number(),
                                opened.link().expiresAt().toEpochMilli())))
                .orElseGet(() -> ResponseEntity.status(HttpStatus.UNAUTHORIZED).build());
    }

    /** Keeps a report and answers it. */
    @PostMapping("/home/report")
    String report(
            @RequestParam Map<String, String> fields,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Optional<Opened> opened = door.opened();
        if (opened.isEmpty()) {
            return CLOSED;
        }
        Report report = new Report(fields);
        if (!report.who().isEmpty() && !report.who().equals(view.who(opened.get()))) {
            // Made with another person's code on the same phone.
            return refuse(HttpStatus.CONFLICT, "wrong.who", opened.get(), report, request, response, model);
        }
        ObjectNode body = reports.body(opened.get(), report);
        List<String> missing = report.missing();
        if (!missing.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            Words words = PatientViews.words(HomeView.language(request, opened.get()));
            return view.home(
                    opened.get(), report, missing.stream().map(words::get).toList(), request, model);
        }
        // A danger sign is kept and answered whatever else is missing.
        if (!report.anySign() && !reports.readable(opened.get(), report, body)) {
            return refuse(
                    HttpStatus.UNPROCESSABLE_CONTENT, "wrong.report", opened.get(), report, request, response, model);
        }
        boolean flood = request.getAttribute(CodeRates.class.getName()) != null;
        if (flood || reports.tooMany(opened.get().chart(), report)) {
            response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
            return report.anySign()
                    ? view.answer(opened.get(), Reports.unkept(report), request, model)
                    : refuse(
                            HttpStatus.TOO_MANY_REQUESTS, "wrong.many", opened.get(), report, request, response, model);
        }
        Reports.Answer answer = reports.take(opened.get(), report, body);
        response.setHeader(KEPT, answer.id());
        return view.answer(opened.get(), answer, request, model);
    }

    private String refuse(
            HttpStatus status,
            String key,
            Opened opened,
            Report report,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        response.setStatus(status.value());
        String why = PatientViews.words(HomeView.language(request, opened)).get(key);
        return view.home(opened, report, List.of(why), request, model);
    }
}
