package slipway.web.intake;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Records;
import slipway.care.record.intake.Intake;
import slipway.exercises.exercise.Language;
import slipway.web.door.CodeRates;
import slipway.web.door.PatientCookie;
import slipway.web.door.PatientLanguage;
import slipway.web.door.Place;
import slipway.web.intake.IntakeDoor.Opened;
import slipway.web.told.Answers;
import slipway.web.told.Question;
import slipway.web.told.Questions;

/** The questions before the first visit, one small page after the other. Plain forms: no script is needed. */
@Controller
class IntakeController {
    private static final String CLOSED = "redirect:/p";
    private static final String START = "redirect:/before";

    private final IntakeDoor door;
    private final IntakeView view;
    private final Dangers dangers;
    private final Records records;
    private final PatientCookie cookie;

    IntakeController(IntakeDoor door, IntakeView view, Dangers dangers, Records records, PatientCookie cookie) {
        this.door = door;
        this.view = view;
        this.dangers = dangers;
        this.records = records;
        this.cookie = cookie;
    }

    /** The beginning, the page where the person was, or the end. */
    @GetMapping("/before")
    String start(HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<Opened> opened = door.opened();
        if (opened.isEmpty()) {
            return CLOSED;
        }
        keepLanguage(request, response);
        Optional<Intake> done = opened.get().done();
        if (done.isPresent()) {
            return view.done(opened.get(), done.get().toldAt(), request, model);
        }
        return IntakeDraft.find(records, opened.get())
                .map(draft -> START + "/" + draft.step())
                .orElseGet(() -> view.welcome(opened.get(), request, model));
    }

    /** What to do about the signs that were told. */
    @GetMapping("/before/now")
    String now(
            @RequestParam(defaultValue = "1") String from,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Optional<Opened> opened = door.opened();
        if (opened.isEmpty()) {
            return CLOSED;
        }
        keepLanguage(request, response);
        Optional<Intake> last = opened.get().told().stream().reduce((first, second) -> second);
        List<Question> signs = draft(opened.get()).answers().signs();
        return last.isEmpty() || signs.isEmpty()
                ? START
                : view.now(signs, step(from).orElse(1), last.map(Intake::toldAt), opened.get(), request, model);
    }

    @GetMapping("/before/{step}")
    String show(@PathVariable String step, HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<Opened> opened = door.opened();
        if (opened.isEmpty()) {
            return CLOSED;
        }
        keepLanguage(request, response);
        Optional<Integer> number = step(step);
        return number.isEmpty() || opened.get().done().isPresent()
                ? START
                : view.step(number.get(), draft(opened.get()).answers(), Map.of(), opened.get(), request, model);
    }

    /**
     * Keeps a page of answers and goes on.
     *
     * @param go {@code next}, {@code back}, {@code stay} or {@code done}
     */
    @PostMapping("/before/{step}")
    String save(
            @PathVariable String step,
            @RequestParam(defaultValue = "next") String go,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Optional<Opened> opened = door.opened();
        if (opened.isEmpty()) {
            return CLOSED;
        }
        keepLanguage(request, response);
        Optional<Integer> number = step(step);
        if (number.isEmpty() || opened.get().done().isPresent()) {
            return START;
        }
        var page = new Sent(number.get(), go, StepReading.of(request.getParameterMap(), Questions.of(number.get())));
        return request.getAttribute(CodeRates.class.getName()) == null
                ? keep(page, opened.get(), request, response, model)
                : tooMany(page, opened.get(), request, response, model);
    }

    /** One page as it was sent. */
    private record Sent(int step, String go, StepReading reading) {
        int next() {
            int to = step + (go.equals("back") ? -1 : go.equals("next") ? 1 : 0);
            return Math.min(Math.max(to, 1), Questions.STEPS);
        }
    }

    private String keep(
            Sent page, Opened opened, HttpServletRequest request, HttpServletResponse response, Model model) {
        boolean wrong = !page.reading().mistakes().isEmpty();
        IntakeDraft draft =
                draft(opened).with(Questions.of(page.step()), page.reading().good(), wrong ? page.step() : page.next());
        draft.save(records, opened);
        Language language = IntakeView.language(request, opened);
        Dangers.Outcome told = dangers.tell(opened, draft.answers(), language);
        if (told == Dangers.Outcome.FAILED) {
            response.setStatus(HttpStatus.SERVICE_UNAVAILABLE.value());
            return view.now(draft.answers().signs(), page.step(), Optional.empty(), opened, request, model);
        }
        if (wrong) {
            return refuse(HttpStatus.UNPROCESSABLE_CONTENT, page, Map.of(), opened, request, response, model);
        }
        if (told == Dangers.Outcome.TOLD) {
            return START + "/now?from=" + page.step();
        }
        if (page.go().equals("done")) {
            opened.chart()
                    .intakes()
                    .tell(true, language, draft.answers().content(), dangers.alert(opened, draft.answers()));
            IntakeDraft.drop(records, opened);
            return START;
        }
        return START + "/" + page.next();
    }

    /** In a flood nothing is kept, but a sign of danger is answered all the same. */
    private String tooMany(
            Sent page, Opened opened, HttpServletRequest request, HttpServletResponse response, Model model) {
        List<Question> signs = new Answers(page.reading().good()).signs();
        if (signs.isEmpty()) {
            return refuse(
                    HttpStatus.TOO_MANY_REQUESTS, page, Map.of("", "wrong.many"), opened, request, response, model);
        }
        response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
        Optional<Instant> nobody = Optional.empty();
        return view.now(signs, page.step(), nobody, opened, request, model);
    }

    private String refuse(
            HttpStatus status,
            Sent page,
            Map<String, String> more,
            Opened opened,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        response.setStatus(status.value());
        var mistakes = new HashMap<>(page.reading().mistakes());
        mistakes.putAll(more);
        return view.step(page.step(), page.reading().shown(), mistakes, opened, request, model);
    }

    /** Closes the pages on this phone; what was told so far stays. */
    @PostMapping("/before/leave")
    String leave(HttpServletRequest request, HttpServletResponse response) {
        response.addHeader(
                HttpHeaders.SET_COOKIE, cookie.none(Place.BEFORE, request).toString());
        response.setHeader("Clear-Site-Data", "\"cache\"");
        return CLOSED;
    }

    private IntakeDraft draft(Opened opened) {
        return IntakeDraft.find(records, opened).orElseGet(IntakeDraft::empty);
    }

    private static void keepLanguage(HttpServletRequest request, HttpServletResponse response) {
        PatientLanguage.keep(request, Place.BEFORE)
                .ifPresent(kept -> response.addHeader(HttpHeaders.SET_COOKIE, kept.toString()));
    }

    private static Optional<Integer> step(String text) {
        return Optional.of(text)
                .filter(each -> each.matches("[0-9]{1,2}"))
                .map(Integer::valueOf)
                .filter(each -> each >= 1 && each <= Questions.STEPS);
    }
}
