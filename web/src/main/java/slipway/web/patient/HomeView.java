package slipway.web.patient;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.follow.HomeExercise;
import slipway.care.record.access.Clinic;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.follow.CheckIn;
import slipway.documents.sheet.HomeSheetPrinter;
import slipway.documents.words.Words;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Language;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.propose.Followed;
import slipway.reasoning.response.rules.Rule;
import slipway.reasoning.response.rules.RuleBook;
import slipway.web.door.PatientCookie;
import slipway.web.door.PatientLanguage;
import slipway.web.episode.home.HomeCourse;
import slipway.web.patient.PatientDoor.Opened;

/** Puts together what the pages of the person at home show. */
@Component
public class HomeView {
    private static final int SIGNS = 7;
    /** From here on the rules of response want the therapist to look first (rule long-gap). */
    private static final int LONG_BREAK_DAYS = 14;

    private final HomeCourse course;
    private final PatientViews views;
    private final PatientCookie cookie;
    private final Closed closed;
    private final Clock clock;

    HomeView(HomeCourse course, PatientViews views, PatientCookie cookie, Closed closed, Clock clock) {
        this.course = course;
        this.views = views;
        this.cookie = cookie;
        this.closed = closed;
        this.clock = clock;
    }

    /**
     * An exercise that may be reported on.
     *
     * @param planned repetitions of one session as they hold now, 0 if not known
     * @param less the dose of now where it is less than what the sheet says; empty otherwise
     * @param stopped whether it rests until the therapist has looked at it
     */
    public record Choice(String id, String name, int planned, Optional<HomeDose> less, boolean stopped) {}

    static Language language(HttpServletRequest request, Opened opened) {
        return PatientLanguage.chosen(request)
                .orElse(opened.chart().person().details().language());
    }

    /** A name for whose pages these are, for the phone. */
    String who(Opened opened) {
        return cookie.alias(opened.chart().episode().id());
    }

    /** Whether nothing may be done now: everything was stopped, or each exercise by itself. */
    boolean locked(Opened opened) {
        return course.rests(opened.chart(), opened.home());
    }

    private static boolean stopped(Followed followed, String exercise) {
        return Optional.ofNullable(followed.state().courses().get(exercise))
                .filter(Course::stopped)
                .isPresent();
    }

    /** The page with the form; {@code given} is what was sent and could not be taken. */
    String home(Opened opened, Report given, List<String> mistakes, HttpServletRequest request, Model model) {
        Language language = language(request, opened);
        Followed followed = course.followed(opened.chart(), opened.home());
        boolean locked = locked(opened);
        model.addAttribute("mistakes", mistakes);
        model.addAttribute("given", given);
        model.addAttribute("id", UUID.randomUUID().toString());
        model.addAttribute("who", who(opened));
        model.addAttribute("plan", opened.home().plan().number());
        model.addAttribute("newer", opened.planIsNewer());
        model.addAttribute("locked", locked);
        model.addAttribute("until", opened.link().expiresAt().toEpochMilli());
        model.addAttribute("exercises", choices(opened.home(), followed, language));
        model.addAttribute("last", last(opened, followed, language));
        long days = silentDays(opened);
        model.addAttribute("silentDays", days);
        model.addAttribute("longBreak", days >= LONG_BREAK_DAYS);
        model.addAttribute("morning", locked ? Optional.empty() : Morning.of(opened.chart(), opened.home()));
        about(opened, language, model);
        return views.show("patient/home", language, request, model);
    }

    /** The page around the moving guide. */
    String guide(Opened opened, HttpServletRequest request, Model model) {
        Language language = language(request, opened);
        model.addAttribute("who", who(opened));
        model.addAttribute("locked", locked(opened));
        Followed followed = course.followed(opened.chart(), opened.home());
        model.addAttribute("exercises", choices(opened.home(), followed, language));
        about(opened, language, model);
        return views.show("patient/guide", language, request, model);
    }

    String answer(Opened opened, Reports.Answer answer, HttpServletRequest request, Model model) {
        Language language = language(request, opened);
        model.addAttribute("says", answer.spoken().map(rule -> words(rule, language)));
        model.addAttribute("emergency", answer.emergency());
        model.addAttribute("call", answer.call());
        about(opened, language, model);
        return views.show("patient/answer", language, request, model);
    }

    private static String words(Rule rule, Language language) {
        return language == Language.ES ? rule.es() : rule.en();
    }

    private void about(Opened opened, Language language, Model model) {
        Clinic clinic = opened.clinic();
        model.addAttribute("clinic", clinic);
        model.addAttribute("closed", closed.advice(clinic, language));
        Words sheet = Words.beside(HomeSheetPrinter.class, language);
        model.addAttribute(
                "signs",
                IntStream.rangeClosed(1, SIGNS)
                        .mapToObj(each -> sheet.get("emergency.sign." + each))
                        .toList());
    }

    private static List<Choice> choices(HomeCourse.Home home, Followed followed, Language language) {
        return home.exercises().stream()
                .map(id -> {
                    Optional<HomeDose> given = home.given().glide(id).map(HomeExercise::dose);
                    Optional<HomeDose> now = Optional.ofNullable(
                                    followed.state().courses().get(id))
                            .map(found -> found.dose())
                            .or(() -> given);
                    return new Choice(
                            id,
                            Catalogue.bundled().get(id).name().in(language),
                            now.map(dose -> dose.sets() * dose.repetitions()).orElse(0),
                            now.filter(dose -> given.isPresent() && !given.get().notAbove(dose)),
                            stopped(followed, id));
                })
                .toList();
    }

    /** Since the last report, or since the plan was given. */
    private long silentDays(Opened opened) {
        PlanVersion plan = opened.home().plan();
        Instant given = plan.releasedAt().orElse(plan.madeAt());
        Instant heard = opened.chart()
                .checkIns()
                .newest()
                .map(CheckIn::receivedAt)
                .filter(given::isBefore)
                .orElse(given);
        return Duration.between(heard, clock.instant()).toDays();
    }

    /** The answer to the newest report, for whoever sent it without seeing what came back. */
    private static Optional<String> last(Opened opened, Followed followed, Language language) {
        Chart chart = opened.chart();
        return chart.checkIns()
                .newest()
                .flatMap(newest -> followed.results().stream()
                        .filter(each -> each.checkinId().equals(newest.id()))
                        .reduce((first, second) -> second)
                        .map(result -> words(RuleBook.bundled().spoken(result.rules()), language)));
    }
}
