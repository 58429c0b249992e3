package slipway.web.patient;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
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
import slipway.web.patient.PatientDoor.Opened;
import tools.jackson.databind.node.ObjectNode;

/** What the person at home sees. Whatever goes wrong here, the emergency number stands on the page. */
@Controller
class PatientController {
    /** Nobody reports more often in a day; a flood is turned away before anything is computed. */
    private static final int MOST_A_DAY = 40;

    private static final int SIGNS = 7;

    private final PatientDoor door;
    private final HomeCourse course;
    private final PatientViews views;
    private final Clock clock;

    PatientController(PatientDoor door, HomeCourse course, PatientViews views, Clock clock) {
        this.door = door;
        this.course = course;
        this.views = views;
        this.clock = clock;
    }

    @GetMapping("/home")
    String home(HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<Opened> opened = door.opened();
        if (opened.isEmpty()) {
            return "redirect:/p";
        }
        PatientViews.keep(request).ifPresent(kept -> response.addHeader(HttpHeaders.SET_COOKIE, kept.toString()));
        return form(opened.get(), List.of(), request, model);
    }

    /** Keeps a report and answers it. */
    @PostMapping("/home/report")
    String report(@ModelAttribute Report given, HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<Opened> opened = door.opened();
        if (opened.isEmpty()) {
            return "redirect:/p";
        }
        Chart chart = opened.get().chart();
        HomeCourse.Home home = opened.get().home();
        Words words = PatientViews.words(language(request, opened.get()));
        List<String> missing = given.missing();
        ObjectNode body = given.body(clock.instant());
        // A danger sign is kept and answered whatever else is missing.
        boolean readable = HomeCourse.mistakes(body, home).isEmpty();
        if (missing.isEmpty() && !readable && !given.anySign()) {
            missing = List.of("wrong.report");
        }
        if (missing.isEmpty() && !given.anySign() && tooMany(chart)) {
            response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
            missing = List.of("wrong.many");
        } else if (!missing.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        if (!missing.isEmpty()) {
            return form(opened.get(), missing.stream().map(words::get).toList(), request, model);
        }
        String id = keep(chart, given, body);
        if (given.signRule().isPresent()) {
            Rule rule = RuleBook.bundled().get(given.signRule().get());
            boolean emergency = rule.id().equals("emergency");
            return answer(
                    opened.get(),
                    id,
                    new Answer(rule, emergency ? Contact.EMERGENCY_NUMBER : Contact.SAME_DAY),
                    request,
                    model);
        }
        RespondResult result = course.followed(chart, home).results().stream()
                .filter(each -> each.checkinId().equals(id))
                .reduce((first, second) -> second)
                .orElseThrow();
        Rule spoken = RuleBook.bundled().spoken(result.rules());
        return answer(opened.get(), id, new Answer(spoken, result.contact()), request, model);
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

    private String answer(Opened opened, String id, Answer answer, HttpServletRequest request, Model model) {
        Rule spoken = answer.spoken();
        Contact contact = answer.contact();
        Chart chart = opened.chart();
        if (contact == Contact.SAME_DAY || contact == Contact.EMERGENCY_NUMBER) {
            chart.checkIns()
                    .raise(
                            spoken.id(),
                            "Check-in: " + spoken.why(),
                            Optional.of(id),
                            chart.episode().therapistId());
        }
        Language language = language(request, opened);
        model.addAttribute("says", language == Language.ES ? spoken.es() : spoken.en());
        model.addAttribute("emergency", contact == Contact.EMERGENCY_NUMBER);
        model.addAttribute("call", contact == Contact.SAME_DAY || contact == Contact.CALL);
        model.addAttribute("clinic", opened.clinic());
        return views.show("patient/answer", language, request, model);
    }

    /** The guide as a file that works without network. */
    @GetMapping("/home/guide.html")
    ResponseEntity<byte[]> guide() {
        Optional<Opened> opened = door.opened();
        boolean open = opened.isPresent()
                && !course.locked(opened.get().chart(), opened.get().home());
        Optional<byte[]> bytes = open ? newestGuide(opened.get().chart()) : Optional.empty();
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
                        .header(HttpHeaders.LOCATION, opened.isPresent() ? "/home" : "/p")
                        .build());
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

    private String form(Opened opened, List<String> mistakes, HttpServletRequest request, Model model) {
        Chart chart = opened.chart();
        HomeCourse.Home home = opened.home();
        Language language = language(request, opened);
        Clinic clinic = opened.clinic();
        model.addAttribute("mistakes", mistakes);
        model.addAttribute("id", UUID.randomUUID().toString());
        model.addAttribute("clinic", clinic);
        model.addAttribute("newer", opened.planIsNewer());
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
        return views.show("patient/report", language, request, model);
    }

    private static Language language(HttpServletRequest request, Opened opened) {
        return PatientViews.chosen(request)
                .orElse(opened.chart().person().details().language());
    }
}
