package slipway.web.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Act;
import slipway.care.record.Saving;
import slipway.care.record.caseload.PersonRow;
import slipway.care.record.chart.Chart;
import slipway.documents.words.Words;
import slipway.exchange.fhir.Known;
import slipway.exchange.fhir.Referral;
import slipway.exchange.fhir.RefusedException;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Side;
import slipway.web.WebOptions;
import slipway.web.episode.CodeBook;
import slipway.web.episode.Desk;
import slipway.web.form.Option;
import slipway.web.shell.Area;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;

/**
 * A referral from a file of another system: upload, what it would change, confirm. Nothing is kept between the three: the
 * file travels with the page, and a word says beside what it was shown.
 */
@Controller
class ReferralController {
    private static final Words WORDS = Words.beside(ReferralController.class, Language.EN);
    private static final String PAGE = "/people/referral";
    private static final int MOST_PEOPLE = 500;

    private final Desk desk;
    private final Pages pages;
    private final WebOptions options;
    private final CodeBook book;

    ReferralController(Desk desk, Pages pages, WebOptions options, CodeBook book) {
        this.book = book;
        this.desk = desk;
        this.pages = pages;
        this.options = options;
    }

    @GetMapping(PAGE)
    String blank(@RequestParam(defaultValue = "") String into, HttpServletRequest request, Model model) {
        return upload(new ReferralForm(null, null, into, null, null, null, null), "", request, model);
    }

    /** What the file would change. */
    @PostMapping(PAGE)
    String preview(
            @ModelAttribute ReferralForm form, HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<String> wrong = form.mistake();
        if (wrong.isPresent()) {
            return refused(form, WORDS.get(wrong.get()), request, response, model);
        }
        try {
            return shown(form, reading(form), "", request, model);
        } catch (RefusedException e) {
            return refused(form, e.reason(), request, response, model);
        }
    }

    /** Takes over what was shown. */
    @PostMapping(PAGE + "/take")
    String take(
            @ModelAttribute ReferralForm form, HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<String> wrong = form.mistake();
        if (wrong.isPresent()) {
            return refused(form, WORDS.get(wrong.get()), request, response, model);
        }
        try {
            Referral referral = reading(form);
            if (!referral.state().equals(form.state())) {
                return again(form, referral, "referral.stale", request, response, model);
            }
            if (referral.mayBeSomebodyElse() && !form.same().equals("yes")) {
                return again(form, referral, "referral.who", request, response, model);
            }
            return taken(form, referral, request, response, model);
        } catch (RefusedException e) {
            return refused(form, e.reason(), request, response, model);
        }
    }

    private String taken(
            ReferralForm form,
            Referral referral,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Act act = desk.act();
        if (form.into().isEmpty()) {
            Chart made = referral.takeAsNew(
                    desk.records(),
                    Side.valueOf(form.side().toUpperCase(Locale.ROOT)),
                    Language.find(form.language()).orElse(Language.EN),
                    options.demo(),
                    act.userId(),
                    act);
            Notices.put(request, WORDS.get("referral.taken"));
            return "redirect:/episodes/" + made.episode().id() + "/history";
        }
        if (referral.preview().changes() && referral.take() instanceof Saving.Stale) {
            return again(form, reading(form), "referral.stale", request, response, model);
        }
        Notices.put(request, WORDS.get("referral.taken"));
        return "redirect:/episodes/" + form.into();
    }

    private Referral reading(ReferralForm form) {
        return form.into().isEmpty()
                ? Referral.ofNewPerson(form.bytes(), book.of(desk.act().clinicId()))
                : Referral.into(
                        desk.open(form.into()), form.bytes(), book.of(desk.act().clinicId()));
    }

    private String again(
            ReferralForm form,
            Referral referral,
            String why,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        response.setStatus(HttpStatus.CONFLICT.value());
        return shown(form, referral, WORDS.get(why), request, model);
    }

    private String refused(
            ReferralForm form, String why, HttpServletRequest request, HttpServletResponse response, Model model) {
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return upload(form, why, request, model);
    }

    private String upload(ReferralForm form, String wrong, HttpServletRequest request, Model model) {
        List<Option> people = desk.records().caseload().people("", "", MOST_PEOPLE, desk.act()).stream()
                .filter(row -> row.newestEpisodeId().isPresent())
                .map(row -> new Option(row.newestEpisodeId().get(), row.name()))
                .toList();
        frame(form, wrong, request, model);
        model.addAttribute("people", people);
        return "people/referral";
    }

    private String shown(ReferralForm form, Referral referral, String wrong, HttpServletRequest request, Model model) {
        frame(form, wrong, request, model);
        model.addAttribute("referral", referral);
        model.addAttribute("file", form.encoded());
        model.addAttribute(
                "namesakes",
                form.into().isEmpty() ? namesakes(referral.preview().known()) : List.of());
        return "people/referral-shown";
    }

    /** Who may be the same person already. */
    private List<PersonRow> namesakes(Known known) {
        return known.name()
                .map(name -> desk.records().caseload().people(name, "", 5, desk.act()))
                .orElse(List.of());
    }

    private void frame(ReferralForm form, String wrong, HttpServletRequest request, Model model) {
        model.addAttribute("page", pages.page(request, Area.PEOPLE, WORDS.get("referral.title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("wrong", wrong);
        model.addAttribute("form", ReferralView.of(form));
    }
}
