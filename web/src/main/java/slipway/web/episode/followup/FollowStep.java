package slipway.web.episode.followup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.chart.Chart;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.propose.RespondResult;
import slipway.web.episode.Desk;
import slipway.web.episode.Step;
import slipway.web.episode.StepPage;
import slipway.web.episode.home.HomeCourse;
import slipway.web.form.FormView;

/** What came from home, and what was answered. */
@Component
class FollowStep implements StepPage {
    static final Words WORDS = Words.beside(FollowStep.class, Language.EN);

    private final HomeCourse course;
    private final Desk desk;
    private final NextDoses doses;

    FollowStep(HomeCourse course, Desk desk, NextDoses doses) {
        this.course = course;
        this.desk = desk;
        this.doses = doses;
    }

    @Override
    public Step step() {
        return Step.FOLLOW;
    }

    @Override
    public Words words() {
        return WORDS;
    }

    @Override
    public void fill(Chart chart, FormView form, Model model) {
        Optional<HomeCourse.Home> home = course.home(chart);
        Map<String, RespondResult> results =
                home.map(each -> course.followed(chart, each).results()).orElse(List.of()).stream()
                        .collect(
                                Collectors.toMap(RespondResult::checkinId, Function.identity(), (one, other) -> other));
        List<Answered> answered = new ArrayList<>(chart.checkIns().list().stream()
                .map(report -> Answered.of(report, Optional.ofNullable(results.get(report.id()))))
                .toList());
        Collections.reverse(answered);
        model.addAttribute("home", home.isPresent());
        model.addAttribute(
                "doses", home.map(each -> doses.rows(chart, each, typed(model))).orElse(List.of()));
        model.addAttribute(
                "locked", home.filter(each -> course.locked(chart, each)).isPresent());
        boolean untaken = chart.checkIns().alerts().stream()
                .anyMatch(alert -> alert.acknowledged().isEmpty());
        model.addAttribute(
                "resting",
                home.filter(each -> !untaken).map(each -> resting(chart, each)).orElse(List.of()));
        model.addAttribute("answered", answered);
        model.addAttribute("alerts", chart.checkIns().alerts());
        model.addAttribute(
                "links",
                desk.records().links().list(chart.episode().id(), desk.act()).stream()
                        .filter(link -> link.purpose() == LinkPurpose.GUIDE)
                        .toList());
        model.addAttribute("now", desk.clock().instant());
        if (!model.containsAttribute("fresh")) {
            model.addAttribute("fresh", Optional.empty());
        }
    }

    /** Names of the exercises that rest until a clinician lets the person go on. */
    private List<String> resting(Chart chart, HomeCourse.Home home) {
        var courses = course.followed(chart, home).state().courses();
        boolean all = course.locked(chart, home);
        return home.exercises().stream()
                .filter(id -> all
                        || Optional.ofNullable(courses.get(id))
                                .filter(Course::stopped)
                                .isPresent())
                .map(Answered::name)
                .toList();
    }

    private static Optional<NextDoses.Typed> typed(Model model) {
        return model.getAttribute("typed") instanceof Optional<?> held
                ? held.filter(NextDoses.Typed.class::isInstance).map(NextDoses.Typed.class::cast)
                : Optional.empty();
    }
}
