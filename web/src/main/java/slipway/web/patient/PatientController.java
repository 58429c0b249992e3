package slipway.web.patient;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import slipway.care.record.access.AccessLink;
import slipway.care.record.access.Clinic;
import slipway.care.record.chart.Chart;
import slipway.care.record.follow.CheckIn;
import slipway.care.record.papers.StoredDocument;
import slipway.documents.sheet.HomeSheetPrinter;
import slipway.documents.words.Words;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Language;
import slipway.reasoning.response.propose.RespondResult;
import slipway.reasoning.response.rules.Contact;
import slipway.reasoning.response.rules.Rule;
import slipway.reasoning.response.rules.RuleBook;
import slipway.web.episode.home.HomeCourse;
import slipway.web.form.Option;
import slipway.web.shell.Pages;
import tools.jackson.databind.node.ObjectNode;

/** What the person at home sees. Whatever goes wrong here, the emergency number stands on the page. */
@Controller
class PatientController {
    private static final int IDLE_SECONDS = 1800;
    /** Nobody reports more often in a day; a flood is turned away before anything is computed. */
    private static final int MOST_A_DAY = 40;

    private static final int SIGNS = 7;

    private final PatientDoor door;
    private final HomeCourse course;
    private final Pages pages;
    private final SecurityContextRepository contexts;
    private final Clock clock;

    PatientController(
            PatientDoor door, HomeCourse course, Pages pages, SecurityContextRepository contexts, Clock clock) {
        this.door = door;
        this.course = course;
        this.pages = pages;
        this.contexts = contexts;
        this.clock = clock;
    }

    /** Said when a code or a session has run out. */
    @GetMapping("/p")
    String closed(HttpServletRequest request, Model model) {
        model.addAttribute("clinics", door.clinics());
        return show("patient/closed", language(request, Language.EN), request, model);
    }

    /** Asks before it lets in, so that a preview of a message does not use the code. */
    @GetMapping("/p/{token}")
    String ask(@PathVariable String token, HttpServletRequest request, Model model) {
        if (door.usable(token).isEmpty()) {
            return "redirect:/p";
        }
        model.addAttribute("token", token);
        return show("patient/open", language(request, Language.EN), request, model);
    }

    @PostMapping("/p/{token}")
    String enter(@PathVariable String token, HttpServletRequest request, HttpServletResponse response) {
        Optional<PatientUser> user = door.usable(token).flatMap((AccessLink link) -> door.enter(link));
        if (user.isEmpty()) {
            return "redirect:/p";
        }
        request.getSession();
        request.changeSessionId();
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                user.get(), null, List.of(new SimpleGrantedAuthority("patient"))));
        SecurityContextHolder.setContext(context);
        contexts.saveContext(context, request, response);
        request.getSession().setMaxInactiveInterval(IDLE_SECONDS);
        return "redirect:/home";
    }

    @GetMapping("/home")
    String home(HttpServletRequest request, Model model) {
        Optional<Chart> chart = door.chart();
        Optional<HomeCourse.Home> home = chart.flatMap(course::home);
        if (home.isEmpty()) {
            return "redirect:/p";
        }
        return form(chart.get(), home.get(), List.of(), request, model);
    }

    /** Keeps a report and answers it. */
    @PostMapping("/home/report")
    String report(@ModelAttribute Report given, HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<Chart> chart = door.chart();
        Optional<HomeCourse.Home> home = chart.flatMap(course::home);
        if (home.isEmpty()) {
            return "redirect:/p";
        }
        Words words = words(language(request, chart.get().person().details().language()));
        List<String> missing = given.missing();
        ObjectNode body = given.body(clock.instant());
        // A danger sign is kept and answered whatever else is missing.
        boolean readable = HomeCourse.mistakes(body, home.get()).isEmpty();
        if (missing.isEmpty() && !readable && !given.anySign()) {
            missing = List.of("wrong.report");
        }
        if (missing.isEmpty() && !given.anySign() && tooMany(chart.get())) {
            response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
            missing = List.of("wrong.many");
        } else if (!missing.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        if (!missing.isEmpty()) {
            return form(
                    chart.get(), home.get(), missing.stream().map(words::get).toList(), request, model);
        }
        String id = keep(chart.get(), given, body);
        if (given.signRule().isPresent()) {
            Rule rule = RuleBook.bundled().get(given.signRule().get());
            boolean emergency = rule.id().equals("emergency");
            return answer(
                    chart.get(),
                    id,
                    new Answer(rule, emergency ? Contact.EMERGENCY_NUMBER : Contact.SAME_DAY),
                    request,
                    model);
        }
        RespondResult result = course.followed(chart.get(), home.get()).results().stream()
                .filter(each -> each.checkinId().equals(id))
                .reduce((first, second) -> second)
                .orElseThrow();
        Rule spoken = RuleBook.bundled().spoken(result.rules());
        return answer(chart.get(), id, new Answer(spoken, result.contact()), request, model);
    }

    /**
     * Keeps a report and tells under which id. The same sent again is kept once; whoever went back and changed the
     * answers sends another report, which gets an id of its own.
     */
    private static String keep(Chart chart, Report given, ObjectNode body) {
        Optional<CheckIn> earlier = chart.checkIns().list().stream()
                .filter(each -> each.id().equals(given.id()))
                .findFirst();
        if (earlier.isPresent() && Report.sameAnswers(earlier.get().body(), body)) {
            return given.id();
        }
        String id = earlier.isPresent() ? UUID.randomUUID().toString() : given.id();
        ObjectNode kept = body.put("checkin_id", id).put("session_id", id);
        chart.checkIns().add(id, id, given.exercise(), kept);
        return id;
    }

    /** The rule whose words the person reads, and who has to speak with whom. */
    private record Answer(Rule spoken, Contact contact) {}

    private String answer(Chart chart, String id, Answer answer, HttpServletRequest request, Model model) {
        Rule spoken = answer.spoken();
        Contact contact = answer.contact();
        if (contact == Contact.SAME_DAY || contact == Contact.EMERGENCY_NUMBER) {
            chart.checkIns()
                    .raise(
                            spoken.id(),
                            "Check-in: " + spoken.why(),
                            Optional.of(id),
                            chart.episode().therapistId());
        }
        Language language = language(request, chart.person().details().language());
        model.addAttribute("says", language == Language.ES ? spoken.es() : spoken.en());
        model.addAttribute("emergency", contact == Contact.EMERGENCY_NUMBER);
        model.addAttribute("call", contact == Contact.SAME_DAY || contact == Contact.CALL);
        model.addAttribute("clinic", door.clinic(chart));
        return show("patient/answer", language, request, model);
    }

    /** The guide as a file that works without network. */
    @GetMapping("/home/guide.html")
    ResponseEntity<byte[]> guide() {
        Optional<Chart> chart = door.chart();
        Optional<HomeCourse.Home> home = chart.flatMap(course::home);
        boolean open = home.isPresent() && !course.locked(chart.get(), home.get());
        Optional<byte[]> bytes = open ? newestGuide(chart.get()) : Optional.empty();
        return bytes.map(found -> ResponseEntity.ok()
                        .contentType(MediaType.APPLICATION_OCTET_STREAM)
                        .header(
                                HttpHeaders.CONTENT_DISPOSITION,
                                ContentDisposition.attachment()
                                        .filename("guide.html")
                                        .build()
                                        .toString())
                        .body(found))
                .orElseGet(() -> ResponseEntity.status(HttpStatus.SEE_OTHER)
                        .header(HttpHeaders.LOCATION, home.isPresent() ? "/home" : "/p")
                        .build());
    }

    @PostMapping("/home/leave")
    String leave(HttpServletRequest request) {
        request.getSession().invalidate();
        SecurityContextHolder.clearContext();
        return "redirect:/p";
    }

    private static Optional<byte[]> newestGuide(Chart chart) {
        return chart.documents().list().stream()
                .filter(document -> document.kind().equals("guide"))
                .findFirst()
                .map(StoredDocument::id)
                .flatMap(chart.documents()::bytes);
    }

    private boolean tooMany(Chart chart) {
        Instant since = clock.instant().minus(Duration.ofDays(1));
        return chart.checkIns().list().stream()
                        .filter(each -> each.receivedAt().isAfter(since))
                        .count()
                >= MOST_A_DAY;
    }

    private String form(
            Chart chart, HomeCourse.Home home, List<String> mistakes, HttpServletRequest request, Model model) {
        Language language = language(request, chart.person().details().language());
        Clinic clinic = door.clinic(chart);
        model.addAttribute("mistakes", mistakes);
        model.addAttribute("id", UUID.randomUUID().toString());
        model.addAttribute("clinic", clinic);
        model.addAttribute("locked", course.locked(chart, home));
        model.addAttribute(
                "exercises",
                home.exercises().stream()
                        .map(each -> new Option(
                                each, Catalogue.bundled().get(each).name().in(language)))
                        .toList());
        Words sheet = Words.beside(HomeSheetPrinter.class, language);
        model.addAttribute("signsTitle", sheet.get("emergency.intro", clinic.emergencyNumber()));
        model.addAttribute(
                "signs",
                java.util.stream.IntStream.rangeClosed(1, SIGNS)
                        .mapToObj(each -> sheet.get("emergency.sign." + each))
                        .toList());
        return show("patient/report", language, request, model);
    }

    private String show(String view, Language language, HttpServletRequest request, Model model) {
        Words words = words(language);
        model.addAttribute("page", pages.page(request, words.get("title")));
        model.addAttribute("t", words);
        model.addAttribute("language", language);
        return view;
    }

    private static Words words(Language language) {
        return Words.beside(PatientController.class, language);
    }

    /** The language that was chosen on the page, or that of the person. */
    private static Language language(HttpServletRequest request, Language otherwise) {
        String asked = Optional.ofNullable(request.getParameter("language")).orElse("");
        Optional<Language> chosen = Language.find(asked.toLowerCase(Locale.ROOT));
        if (chosen.isPresent()) {
            request.getSession().setAttribute("language", chosen.get().code());
            return chosen.get();
        }
        return request.getSession().getAttribute("language") instanceof String kept
                ? Language.find(kept).orElse(otherwise)
                : otherwise;
    }
}
