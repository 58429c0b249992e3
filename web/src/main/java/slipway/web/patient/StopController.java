package slipway.web.patient;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import slipway.care.record.Records;
import slipway.web.door.PatientLanguage;
import slipway.web.episode.Cases;

/** Ends reminders by e-mail for whoever has the token of one, without signing in; RFC 8058 asks for just that. */
@Controller
class StopController {
    private final Records records;
    private final PatientViews views;
    private final Clock clock;

    StopController(Records records, PatientViews views, Clock clock) {
        this.records = records;
        this.views = views;
        this.clock = clock;
    }

    /** Only asks: programs that look into mail open every address in it. */
    @GetMapping("/stop/{token}")
    String ask(@PathVariable String token, HttpServletRequest request, HttpServletResponse response, Model model) {
        boolean known = records.reminders().knowsStop(Cases.digest(token));
        return show(token, known, "stop", request, response, model);
    }

    @PostMapping("/stop/{token}")
    String stop(@PathVariable String token, HttpServletRequest request, HttpServletResponse response, Model model) {
        boolean known = records.reminders().stop(Cases.digest(token), clock.instant());
        return show(token, known, "stop.done", request, response, model);
    }

    private String show(
            String token,
            boolean known,
            String state,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        if (!known) {
            response.setStatus(HttpStatus.NOT_FOUND.value());
        }
        model.addAttribute("token", token);
        model.addAttribute("state", known ? state : "stop.old");
        return views.show("patient/stop", PatientLanguage.ofStranger(request), request, model);
    }
}
