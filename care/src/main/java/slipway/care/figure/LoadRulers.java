package slipway.care.figure;

import java.util.List;
import java.util.Optional;
import slipway.care.visit.VisitPlan;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Site;
import slipway.pictures.ruler.LoadScale;
import slipway.reasoning.dose.DosedExercise;
import slipway.reasoning.tolerance.Interval;
import slipway.reasoning.tolerance.LoadDraws;
import slipway.reasoning.tolerance.NeuralTest;
import slipway.reasoning.tolerance.TestFamily;
import slipway.reasoning.tolerance.Weighted;

/** The load ruler of a plan: the tolerance at the likeliest place, the tests that found it, the exercises below it. */
public final class LoadRulers {
    private LoadRulers() {}

    /** A posture that is put on a ruler. */
    public record Named(String label, Posture posture) {}

    /** The ruler; empty when the plan is stopped or no modelled place is suspected. */
    public static Optional<LoadScale> of(VisitPlan visit) {
        return scale(
                visit,
                (draws, weights) -> visit.given().stream()
                        .map(dosed -> bar(visit, dosed, draws, weights))
                        .toList());
    }

    /** The same ruler with postures in the place of the exercises; may be asked by several threads. */
    public static Optional<LoadScale> of(VisitPlan visit, List<Named> postures) {
        return scale(
                visit,
                (draws, weights) -> postures.stream()
                        .map(named -> bar(named, draws, weights))
                        .toList());
    }

    private interface Bars {
        List<LoadScale.Bar> of(LoadDraws draws, double[] weights);
    }

    private static Optional<LoadScale> scale(VisitPlan visit, Bars bars) {
        return visit.result()
                .flatMap(result -> result.tolerance()
                        .draws()
                        .flatMap(draws -> result.dose().site().map(site -> scale(visit, draws, site, bars))));
    }

    private static LoadScale scale(VisitPlan visit, LoadDraws draws, Site site, Bars bars) {
        double[] weights = draws.weightsAt(site);
        List<LoadScale.Test> tests = visit.neural().ownTests().stream()
                .filter(test -> !test.response().censored())
                .map(test -> test(test, draws, weights))
                .toList();
        Optional<LoadScale.Aim> aim = visit.given().stream()
                .findFirst()
                .map(dosed -> new LoadScale.Aim(dosed.range().effect().limitPct(), "limit"));
        return new LoadScale("% strain", tolerance(draws, weights), aim, tests, bars.of(draws, weights));
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

    /** From rest to the posture; a posture below rest is a mark without length. */
    private static LoadScale.Bar bar(Named named, LoadDraws draws, double[] weights) {
        Interval load = Weighted.interval(draws.loadPctOnce(named.posture()), weights);
        return new LoadScale.Bar(Math.min(0, load.median()), load.median(), load.high(), named.label());
    }
}
