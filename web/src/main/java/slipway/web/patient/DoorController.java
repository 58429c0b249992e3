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
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.access.AccessLink;
import slipway.web.door.CodeRates;
import slipway.web.door.PatientCookie;
import slipway.web.door.PatientLanguage;
import slipway.web.door.Place;

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

    /** Said when a code does not hold, or asks too often. */
    @GetMapping("/p")
    String closed(HttpServletRequest request, Model model) {
        boolean busy = request.getAttribute(CodeRates.class.getName()) != null;
        return closed(busy ? "busy" : "closed", request, model);
    }

    private String closed(String why, HttpServletRequest request, Model model) {
        model.addAttribute("clinics", door.clinics());
        model.addAttribute("why", why);
        return views.show("patient/closed", PatientLanguage.ofStranger(request), request, model);
    }

    /** Asks before it lets in, so that a preview of a message does not use the code. */
    @GetMapping("/p/{token}")
    String ask(@PathVariable String token, HttpServletRequest request, Model model) {
        Optional<AccessLink> link = door.usable(token);
        return link.isEmpty() ? shut(token, request, model) : open(link.get(), token, false, request, model);
    }

    private String shut(String token, HttpServletRequest request, Model model) {
        return door.shutUntil(token).isPresent() ? closed("shut", request, model) : CLOSED;
    }

    private String open(AccessLink link, String token, boolean wrong, HttpServletRequest request, Model model) {
        model.addAttribute("token", token);
        // Only a language that was asked for is kept: otherwise that of the person's record holds.
        model.addAttribute("asked", PatientLanguage.chosen(request).isPresent());
        model.addAttribute("before", PatientDoor.place(link) == Place.BEFORE);
        model.addAttribute("year", link.birthYearAsked());
        model.addAttribute("wrong", wrong);
        return views.show("patient/open", PatientLanguage.ofStranger(request), request, model);
    }

    @PostMapping("/p/{token}")
    String enter(
            @PathVariable String token,
            @RequestParam(defaultValue = "") String year,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        // A form of another site would put somebody into a plan that is not theirs.
        boolean ours = !"cross-site".equals(request.getHeader("Sec-Fetch-Site"));
        Optional<AccessLink> link = door.usable(token).filter(found -> ours);
        if (link.isEmpty()) {
            return shut(token, request, model);
        }
        Place place = PatientDoor.place(link.get());
        PatientDoor.Entry entry = door.enter(link.get(), year);
        if (entry instanceof PatientDoor.Entry.WrongYear) {
            return door.usable(token).isEmpty()
                    ? shut(token, request, model)
                    : open(link.get(), token, true, request, model);
        }
        if (!(entry instanceof PatientDoor.Entry.In in)) {
            return CLOSED;
        }
        response.addHeader(
                HttpHeaders.SET_COOKIE,
                cookie.of(in.user(), link.get().expiresAt(), place, request).toString());
        PatientLanguage.keep(request, place)
                .ifPresent(kept -> response.addHeader(HttpHeaders.SET_COOKIE, kept.toString()));
        return "redirect:" + place.path();
    }

    @PostMapping("/home/leave")
    String leave(HttpServletRequest request, HttpServletResponse response) {
        response.addHeader(
                HttpHeaders.SET_COOKIE, cookie.none(Place.HOME, request).toString());
        response.setHeader("Clear-Site-Data", "\"cache\"");
        return CLOSED;
    }
}
