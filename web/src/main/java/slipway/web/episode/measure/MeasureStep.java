package slipway.web.episode.measure;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.record.chart.Chart;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.pictures.course.ChangeForest;
import slipway.pictures.look.Palette;
import slipway.reasoning.course.CourseInput;
import slipway.reasoning.course.CourseReport;
import slipway.reasoning.course.Discharge;
import slipway.reasoning.course.Goal;
import slipway.reasoning.course.GoalCheck;
import slipway.reasoning.course.MeasureCourse;
import slipway.reasoning.measures.Change;
import slipway.reasoning.measures.Measures;
import slipway.web.episode.Cases;
import slipway.web.episode.Step;
import slipway.web.episode.StepPage;
import slipway.web.episode.VisitPictures.Both;
import slipway.web.form.FormView;
import slipway.web.form.Option;

/** Scores, goals, and where the course stands. */
@Component
class MeasureStep implements StepPage {
    private static final Words WORDS = Words.beside(MeasureStep.class, Language.EN);
    private static final int FOREST_WIDTH = 640;

    private final Cases cases;

    MeasureStep(Cases cases) {
        this.cases = cases;
    }

    @Override
    public Step step() {
        return Step.MEASURE;
    }

    @Override
    public Words words() {
        return WORDS;
    }

    @Override
    public void fill(Chart chart, FormView form, Model model) {
        Optional<CourseReport> report = report(chart);
        model.addAttribute("today", cases.today());
        model.addAttribute(
                "entries", Scores.of(chart).stream().map(ScoreRow::of).toList());
        model.addAttribute("report", report);
        model.addAttribute("forest", report.flatMap(MeasureStep::forest));
        model.addAttribute("goals", chart.goals().list());
        model.addAttribute(
                "measures",
                Measures.bundled().list().stream()
                        .map(measure -> new Option(measure.id(), measure.name() + ": " + measure.about()))
                        .toList());
    }

    /** Where the course stands today; empty before anything was measured. */
    private Optional<CourseReport> report(Chart chart) {
        var series = Scores.series(chart);
        if (series.isEmpty()) {
            return Optional.empty();
        }
        LocalDate opened = LocalDate.ofInstant(chart.episode().openedAt(), ZoneId.systemDefault());
        LocalDate start = series.stream()
                .flatMap(each -> each.first().stream())
                .map(score -> score.day())
                .min(Comparator.naturalOrder())
                .filter(first -> first.isBefore(opened))
                .orElse(opened);
        List<Goal> goals = chart.goals().list().stream()
                .filter(goal -> goal.state().equals("open"))
                .flatMap(goal -> GoalCheck.of(GoalForm.draft(goal), start).goal().stream())
                .toList();
        var input = new CourseInput(start, series, goals, Discharge.Alone.UNKNOWN, Optional.empty());
        return Optional.of(CourseReport.of(input, cases.today()));
    }

    private static Optional<Both> forest(CourseReport report) {
        List<ChangeForest.Row> rows = report.measures().stream()
                .flatMap(course -> row(course).stream())
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Both(
                        ChangeForest.svg(rows, Palette.PAPER, FOREST_WIDTH, "forest"),
                        ChangeForest.svg(rows, Palette.DARK, FOREST_WIDTH, "forest-dark")));
    }

    /** A change in units of the least detectable one; none without a published error. */
    private static Optional<ChangeForest.Row> row(MeasureCourse course) {
        Optional<Change> change = course.change();
        Optional<Double> mdc = course.measure().thresholds().mdc().map(each -> each.value());
        if (change.isEmpty() || mdc.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble important = course.measure()
                .thresholds()
                .mcid()
                .map(each -> OptionalDouble.of(each.value() / mdc.get()))
                .orElse(OptionalDouble.empty());
        return Optional.of(new ChangeForest.Row(
                course.measure().name(),
                change.get().gain() / mdc.get(),
                1,
                important,
                change.get().kind().words()));
    }
}
