package slipway.web.intake;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.door.PatientLanguage;
import slipway.web.intake.IntakeDoor.Opened;
import slipway.web.patient.Closed;
import slipway.web.shell.Pages;
import slipway.web.told.Answers;
import slipway.web.told.Question;
import slipway.web.told.Questions;

/** The pages as the person sees them. On each of them stands what to do in an emergency. */
@Component
class IntakeView {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);

    private final Pages pages;
    private final Closed closed;

    IntakeView(Pages pages, Closed closed) {
        this.pages = pages;
        this.closed = closed;
    }

    static Words words(Language language) {
        return Words.beside(IntakeView.class, language);
    }

    /** Chosen on a page, or that of the person's record. */
    static Language language(HttpServletRequest request, Opened opened) {
        return PatientLanguage.chosen(request)
                .orElse(opened.chart().person().details().language());
    }

    /** What it is about, before the first question. */
    String welcome(Opened opened, HttpServletRequest request, Model model) {
        return show("intake/welcome", opened, request, model);
    }

    /** The end. */
    String done(Opened opened, Instant toldAt, HttpServletRequest request, Model model) {
        model.addAttribute("at", time(toldAt));
        model.addAttribute("alarm", new Answers(opened.done().orElseThrow().answers()).signs());
        return show("intake/done", opened, request, model);
    }

    /**
     * One page of questions.
     *
     * @param shown what is filled in
     * @param mistakes key of the sentence by the question
     */
    String step(
            int step,
            Answers shown,
            Map<String, String> mistakes,
            Opened opened,
            HttpServletRequest request,
            Model model) {
        model.addAttribute("step", step);
        model.addAttribute("questions", Questions.of(step));
        model.addAttribute("shown", shown);
        model.addAttribute("mistakes", mistakes);
        model.addAttribute("told", toldSigns(opened));
        return show("intake/step", opened, request, model);
    }

    /** Signs of danger that the clinic has got. */
    private static List<String> toldSigns(Opened opened) {
        return opened.told().stream()
                .flatMap(each -> new Answers(each.answers()).signs().stream())
                .map(Question::id)
                .toList();
    }

    /**
     * What to do now about signs of danger.
     *
     * @param from the page where they were told
     * @param got when the clinic got it; empty if it has not
     */
    String now(
            List<Question> signs,
            int from,
            Optional<Instant> got,
            Opened opened,
            HttpServletRequest request,
            Model model) {
        model.addAttribute("signs", signs);
        model.addAttribute("emergency", signs.stream().anyMatch(Question::emergency));
        model.addAttribute("from", from);
        model.addAttribute("got", got.map(IntakeView::time).orElse(""));
        return show("intake/now", opened, request, model);
    }

    private static String time(Instant at) {
        return TIME.format(at.atZone(ZoneId.systemDefault()));
    }

    private String show(String view, Opened opened, HttpServletRequest request, Model model) {
        Language language = language(request, opened);
        Words words = words(language);
        model.addAttribute("page", pages.pageApart(request, words.get("title")));
        model.addAttribute("t", words);
        model.addAttribute("q", Questions.words(language));
        model.addAttribute("language", language);
        model.addAttribute("clinic", opened.clinic());
        model.addAttribute("closed", closed.advice(opened.clinic(), language));
        return view;
    }
}
