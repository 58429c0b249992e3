package slipway.web.clinic;

import jakarta.servlet.http.HttpServletRequest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.access.ApiToken;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;
import slipway.care.record.trail.TrailReport;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Desk;
import slipway.web.shell.Area;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;

/** Who did what and when; and whether the trail still holds. */
@Controller
class TrailController {
    private static final Words WORDS = Words.beside(TrailController.class, Language.EN);
    private static final int A_PAGE = 50;

    private final Desk desk;
    private final Pages pages;

    TrailController(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** Entries of the clinic, or of one of its people. */
    @GetMapping("/clinic/trail")
    String trail(
            @RequestParam(defaultValue = "") String person,
            @RequestParam(defaultValue = "0") long before,
            HttpServletRequest request,
            Model model) {
        Act act = desk.act();
        Chain chain = person.isBlank() ? Chain.ofClinic(act.clinicId()) : ofPerson(person, act);
        List<TrailEntry> entries = desk.records().trail().list(chain, before, A_PAGE);
        Map<String, String> names = desk.records().staff().list(act.clinicId()).stream()
                .collect(Collectors.toMap(StaffAccount::id, StaffAccount::displayName));
        model.addAttribute("page", pages.page(request, Area.CLINIC, WORDS.get("trail.title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("person", person);
        model.addAttribute("entries", entries);
        model.addAttribute(
                "names", withTokens(names, entries, desk.records().tokens().list(act.clinicId())));
        model.addAttribute(
                "more", entries.size() == A_PAGE ? entries.get(A_PAGE - 1).seq() : 0L);
        return "clinic/trail";
    }

    /** Names of whoever stands in the entries, also of those who acted through a token. */
    private static Map<String, String> withTokens(
            Map<String, String> names, List<TrailEntry> entries, List<ApiToken> tokens) {
        var all = new HashMap<>(names);
        entries.stream().map(TrailEntry::who).filter(who -> who.contains("/")).forEach(who -> {
            String account = who.substring(0, who.indexOf('/'));
            String token = who.substring(who.indexOf('/') + 1);
            all.put(
                    who,
                    WORDS.get(
                            "trail.through",
                            names.getOrDefault(account, account),
                            TokensController.label(tokens, token).orElse(token)));
        });
        return all;
    }

    @PostMapping("/clinic/trail/verify")
    String verify(HttpServletRequest request) {
        TrailReport report = desk.records().trail().verify();
        Notices.put(
                request,
                report.isIntact()
                        ? WORDS.get("trail.intact", report.chains(), report.entries())
                        : WORDS.get("trail.broken", report.breaks().size()));
        return "redirect:/clinic/trail";
    }

    private Chain ofPerson(String personId, Act act) {
        if (desk.records().people().find(personId, act).isEmpty()) {
            throw new NotThere("person", personId);
        }
        return Chain.ofPerson(personId);
    }
}
