package slipway.web.episode.attempt;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanState;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.chart.SupervisedTry;
import slipway.care.visit.VisitPlan;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.basis.Coefficients;
import slipway.web.episode.BenchLink;
import slipway.web.episode.Cases;
import slipway.web.episode.Step;
import slipway.web.episode.StepPage;
import slipway.web.episode.VisitPictures;
import slipway.web.episode.plan.PlanDrafts;
import slipway.web.form.FormView;

/** The supervised tries. */
@Component
class TryStep implements StepPage {
    private static final Words WORDS = Words.beside(TryStep.class, Language.EN);

    private final Cases cases;

    TryStep(Cases cases) {
        this.cases = cases;
    }

    @Override
    public Step step() {
        return Step.TRY;
    }

    @Override
    public Words words() {
        return WORDS;
    }

    @Override
    public void fill(Chart chart, FormView form, Model model) {
        Optional<PlanVersion> plan = tried(chart);
        Optional<VisitPlan> visit = plan.map(version -> PlanDrafts.visit(cases, version));
        model.addAttribute(
                "bench", visit.map(found -> BenchLink.of(chart.episode().id(), found)));
        model.addAttribute("plan", plan);
        model.addAttribute("visit", visit);
        model.addAttribute("pictures", visit.map(TryStep::pictures).orElse(Map.of()));
        model.addAttribute("tries", plan.map(version -> newest(chart, version)).orElse(Map.of()));
        model.addAttribute("settleLimit", settleLimitMinutes());
        model.addAttribute(
                "anyReleased",
                plan.filter(version -> !released(chart, version).isEmpty()).isPresent());
        model.addAttribute("documents", chart.documents().list());
        model.addAttribute("language", chart.person().details().language().code());
    }

    /** The plan that is tried: the newest one that the therapist has taken. */
    static Optional<PlanVersion> tried(Chart chart) {
        return chart.plans().list().stream()
                .filter(version -> version.state() == PlanState.ACCEPTED || version.state() == PlanState.RELEASED)
                .findFirst();
    }

    /** The newest try of each exercise of a plan. */
    static Map<String, SupervisedTry> newest(Chart chart, PlanVersion plan) {
        Map<String, SupervisedTry> newest = new LinkedHashMap<>();
        chart.visits().tries().stream()
                .filter(each -> each.planVersion() == plan.number())
                .forEach(each -> newest.put(each.entry().exerciseId(), each));
        return newest;
    }

    /** Ids of the exercises whose newest try released them. */
    static List<String> released(Chart chart, PlanVersion plan) {
        return newest(chart, plan).values().stream()
                .filter(each -> each.entry().released())
                .map(each -> each.entry().exerciseId())
                .toList();
    }

    /** Symptoms settle within this after a try that may go home (common practice). */
    static double settleLimitMinutes() {
        return Coefficients.load("sheet.csv").value("settle-minutes");
    }

    private static Map<String, VisitPictures.Both> pictures(VisitPlan visit) {
        Map<String, VisitPictures.Both> pictures = new LinkedHashMap<>();
        visit.given()
                .forEach(dosed -> pictures.put(dosed.range().candidate().id(), VisitPictures.exercise(visit, dosed)));
        return pictures;
    }
}
