package slipway.care.figure;

import java.util.List;
import java.util.Optional;
import slipway.care.visit.VisitPlan;
import slipway.exercises.exercise.Language;
import slipway.mechanics.nerve.Site;
import slipway.pictures.ruler.LoadScale;
import slipway.reasoning.dose.DosedExercise;
import slipway.reasoning.plan.PlanResult;
import slipway.reasoning.tolerance.LoadDraws;
import slipway.reasoning.tolerance.NeuralTest;
import slipway.reasoning.tolerance.TestFamily;
import slipway.reasoning.tolerance.Weighted;

/** The load ruler of a plan: the tolerance at the likeliest place, the tests that found it, the exercises below it. */
public final class LoadRulers {
    private LoadRulers() {}

    /** The ruler; empty when the plan is stopped or no modelled place is suspected. */
    public static Optional<LoadScale> of(VisitPlan visit) {
        return visit.result()
                .flatMap(result -> result.tolerance()
                        .draws()
                        .flatMap(draws -> result.dose().site().map(site -> scale(visit, result, draws, site))));
    }

    private static LoadScale scale(VisitPlan visit, PlanResult result, LoadDraws draws, Site site) {
        double[] weights = draws.weightsAt(site);
        List<LoadScale.Test> tests = visit.neural().ownTests().stream()
                .filter(test -> !test.response().censored())
                .map(test -> test(test, draws, weights))
                .toList();
        List<LoadScale.Bar> bars = result.dose().exercises().stream()
                .map(dosed -> bar(visit, dosed, draws, weights))
                .toList();
        Optional<LoadScale.Aim> aim = result.dose().exercises().stream()
                .findFirst()
                .map(dosed -> new LoadScale.Aim(dosed.range().effect().limitPct(), "limit"));
        return new LoadScale("% strain", tolerance(draws, weights), aim, tests, bars);
    }

    private static Optional<LoadScale.Tolerance> tolerance(LoadDraws draws, double[] weights) {
        return draws.tolerancePct(TestFamily.RAISED_LEG)
                .or(() -> draws.tolerancePct(TestFamily.SITTING))
                .map(values -> new LoadScale.Tolerance(
                        Weighted.quantile(values, weights, 0.10),
                        Weighted.quantile(values, weights, 0.25),
                        Weighted.quantile(values, weights, 0.50),
                        Weighted.quantile(values, weights, 0.75),
                        Weighted.quantile(values, weights, 0.90)));
    }

    private static LoadScale.Test test(NeuralTest test, LoadDraws draws, double[] weights) {
        double load = Weighted.quantile(draws.loadPct(test.reached()), weights, 0.5);
        return new LoadScale.Test(load, "%s %.0f°".formatted(test.id(), test.reachedDeg()));
    }

    private static LoadScale.Bar bar(VisitPlan visit, DosedExercise dosed, LoadDraws draws, double[] weights) {
        var range = dosed.range();
        double start = Weighted.quantile(draws.loadPct(range.candidate().start()), weights, 0.5);
        double high = range.effect().peakLoadPct().median();
        return new LoadScale.Bar(
                Math.min(start, high),
                high,
                range.effect().peakLoadPct().high(),
                visit.exercise(range.candidate().id()).name().in(Language.EN));
    }
}
