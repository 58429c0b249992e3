package slipway.web.episode;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Act;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.shell.Area;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;

/** Breaking the glass: a record of the clinic that is not in one's care, opened with a reason. */
@Controller
@ControllerAdvice
class GlassController {
    private static final Words WORDS = Words.beside(Heads.class, Language.EN);
    private static final int HOURS = 4;
    private static final int SHORTEST_REASON = 10;

    private final Desk desk;
    private final Pages pages;

    GlassController(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    @ExceptionHandler(OutOfReach.class)
    String ask(OutOfReach refused, HttpServletRequest request, HttpServletResponse response, Model model) {
        response.setStatus(HttpServletResponse.SC_FORBIDDEN);
        model.addAttribute("page", pages.page(request, Area.PEOPLE, WORDS.get("glass.title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("episodeId", refused.episodeId());
        model.addAttribute("hours", HOURS);
        return "episode/glass";
    }

    @PostMapping("/episodes/{id}/glass")
    String open(@PathVariable String id, @RequestParam String reason, HttpServletRequest request) {
        if (reason.strip().length() < SHORTEST_REASON) {
            Notices.put(request, WORDS.get("glass.short"));
            return "redirect:/episodes/" + id;
        }
        Act act = desk.act();
        desk.records().staff().breakGlassForEpisode(id, reason.strip(), act.at().plus(Duration.ofHours(HOURS)), act);
        return "redirect:/episodes/" + id;
    }
}
