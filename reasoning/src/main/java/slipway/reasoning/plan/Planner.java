package slipway.reasoning.plan;

import java.util.ArrayList;
import java.util.List;
import slipway.mechanics.nerve.NerveModel;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.dose.DoseCase;
import slipway.reasoning.dose.DoseLimit;
import slipway.reasoning.dose.DosePlan;
import slipway.reasoning.dose.DosePlanner;
import slipway.reasoning.irritability.IrritabilityReport;
import slipway.reasoning.irritability.IrritabilityRule;
import slipway.reasoning.screening.ScreeningResult;
import slipway.reasoning.tolerance.NeuralFindings;
import slipway.reasoning.tolerance.SuspectedSite;
import slipway.reasoning.tolerance.ToleranceEstimate;
import slipway.reasoning.tolerance.ToleranceEstimator;

/** From findings to a plan: tolerance, irritability, dose. */
public final class Planner {
    private Planner() {}

    /** The plan; the same model and request give the same plan. */
    public static PlanResult plan(NerveModel nerve, PlanRequest request) {
        ToleranceEstimate tolerance = ToleranceEstimator.estimate(nerve, request.neural());
        IrritabilityReport irritability = IrritabilityRule.judge(request.irritability());
        DosePlan dose = DosePlanner.plan(new DoseCase(
                request.neural(),
                tolerance,
                irritability,
                request.dose().with(DoseLimit.read(request.screening().listDoseLimits())),
                request.candidates(),
                ScreeningSummary.blocked(request.screening()),
                request.most()));
        var exercises = new ExercisePlan(
                dose.site()
                        .map(site -> dose.exercises().stream()
                                .map(dosed -> PlannedExercise.of(dosed, site))
                                .toList())
                        .orElse(List.of()),
                dose.refused());
        var plan = new CarePlan(
                ScreeningSummary.of(request.screening()),
                sites(request.neural()),
                tolerance.report(),
                irritability,
                exercises,
                cautions(request, tolerance, dose),
                request.model());
        return new PlanResult(plan, dose, tolerance);
    }

    /** What goes with a case whose screening stops the plan: the cautions that always hold and what the screening found. */
    public static List<String> cautionsWhenStopped(ScreeningResult screening) {
        var cautions = new ArrayList<>(Cautions.always());
        cautions.addAll(ScreeningSummary.words(screening));
        return List.copyOf(cautions);
    }

    private static List<SiteShare> sites(NeuralFindings findings) {
        double all =
                findings.sites().stream().mapToDouble(SuspectedSite::weight).sum();
        return findings.sites().stream()
                .map(site -> new SiteShare(
                        site.name(), site.weight() / all, site.site().isPresent()))
                .toList();
    }

    private static List<String> cautions(PlanRequest request, ToleranceEstimate tolerance, DosePlan dose) {
        var cautions = new ArrayList<>(Cautions.always());
        cautions.addAll(ScreeningSummary.words(request.screening()));
        tolerance.report().reasons().stream()
                .filter(Cautions::weakens)
                .map(Reason::text)
                .forEach(cautions::add);
        dose.notes().stream().map(Reason::text).forEach(cautions::add);
        return cautions;
    }
}
