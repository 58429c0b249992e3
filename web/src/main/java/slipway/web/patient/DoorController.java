package slipway.web.patient;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import slipway.care.record.access.AccessLink;
import slipway.web.door.PatientCookie;
import slipway.web.door.PatientUser;

/** Opening a code and closing the pages again. */
@Controller
class DoorController {
    private static final String CLOSED = "redirect:/p";

    private final PatientDoor door;
    private final PatientViews views;
    private final PatientCookie cookie;

    DoorController(PatientDoor door, PatientViews views, PatientCookie cookie) {
        this.door = door;
        this.views = views;
        this.cookie = cookie;
    }

    /** Said when a code does not hold. */
    @GetMapping("/p")
    String closed(HttpServletRequest request, Model model) {
        model.addAttribute("clinics", door.clinics());
        return views.show("patient/closed", PatientViews.ofStranger(request), request, model);
    }

    /** Asks before it lets in, so that a preview of a message does not use the code. */
    @GetMapping("/p/{token}")
    String ask(@PathVariable String token, HttpServletRequest request, Model model) {
        if (door.usable(token).isEmpty()) {
            return CLOSED;
        }
        model.addAttribute("token", token);
        // Only a language that was asked for is kept: otherwise that of the person's record holds.
        model.addAttribute("asked", PatientViews.chosen(request).isPresent());
        return views.show("patient/open", PatientViews.ofStranger(request), request, model);
    }

    @PostMapping("/p/{token}")
    String enter(@PathVariable String token, HttpServletRequest request, HttpServletResponse response) {
        // A form of another site would put somebody into a plan that is not theirs.
        boolean ours = !"cross-site".equals(request.getHeader("Sec-Fetch-Site"));
        Optional<AccessLink> link = door.usable(token).filter(found -> ours);
        Optional<PatientUser> user = link.flatMap(door::enter);
        if (user.isEmpty()) {
            return CLOSED;
        }
        response.addHeader(
                HttpHeaders.SET_COOKIE,
                cookie.of(user.get(), link.orElseThrow().expiresAt(), request).toString());
        PatientViews.keep(request).ifPresent(kept -> response.addHeader(HttpHeaders.SET_COOKIE, kept.toString()));
        return "redirect:/home";
    }

    @PostMapping("/home/leave")
    String leave(HttpServletRequest request, HttpServletResponse response) {
        response.addHeader(HttpHeaders.SET_COOKIE, cookie.none(request).toString());
        response.setHeader("Clear-Site-Data", "\"cache\"");
        return CLOSED;
    }
}
