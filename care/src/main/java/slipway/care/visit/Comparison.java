package slipway.care.visit;

import java.util.ArrayList;
import java.util.List;
import slipway.care.casefile.CaseFile;
import slipway.exercises.catalogue.Catalogue;
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.dose.DesignedRange;
import slipway.reasoning.dose.DosedExercise;
import slipway.reasoning.plan.PlannedExercise;

/**
 * Two exercises for one person, side by side.
 *
 * @param plan a plan with exactly these two
 * @param site the likeliest modelled place, where glide is read; empty if the plan gives neither
 * @param firstGlidesMore share of the draws in which the first one glides more there
 * @param firstLoadsMore share of the draws in which the end of the first one strains the place more
 */
public record Comparison(VisitPlan plan, String site, double firstGlidesMore, double firstLoadsMore) {

    /**
     * Plans the case with these two exercises and compares them draw by draw.
     *
     * @throws IllegalArgumentException if an exercise is not in the catalogue, or the plan does not give both
     */
    public static Comparison of(CaseFile file, String first, String second, String version) {
        if (first.equals(second)) {
            throw new IllegalArgumentException("two different exercises are needed, " + first + " is given twice");
        }
        for (String id : List.of(first, second)) {
            if (Candidates.of(Catalogue.bundled().get(id)).isEmpty()) {
                throw new IllegalArgumentException(id + " is no glide whose range can be designed");
            }
        }
        VisitPlan plan = Visit.plan(file.choosing(List.of(first, second)), version);
        if (plan.given().size() < 2) {
            throw new IllegalArgumentException("the plan does not give both exercises: " + refusals(plan));
        }
        List<PlannedExercise> planned =
                plan.result().orElseThrow().plan().plan().exercises();
        Site site = Site.get(planned.get(0).site());
        NerveModel nerve = Visit.nerve(file);
        double[][] one = effect(nerve, range(plan, first), site);
        double[][] other = effect(nerve, range(plan, second), site);
        return new Comparison(plan, site.name(), share(one[0], other[0]), share(one[1], other[1]));
    }

    private static String refusals(VisitPlan plan) {
        return plan.result()
                .map(result -> result.dose().refused().stream()
                        .map(refusal -> refusal.id() + ": " + refusal.reason().text())
                        .toList()
                        .toString())
                .orElse("the screening stops the plan");
    }

    private static DesignedRange range(VisitPlan plan, String id) {
        return plan.given().stream()
                .map(DosedExercise::range)
                .filter(range -> range.candidate().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Glide from start to end in mm, whatever its direction, and strain at the end, per draw. */
    private static double[][] effect(NerveModel nerve, DesignedRange range, Site site) {
        List<PostureResponse> answers =
                nerve.respondAlong(List.of(range.candidate().start(), range.end()));
        double[] from = answers.get(0).glideMmAt(site);
        double[] to = answers.get(1).glideMmAt(site);
        double[] glide = new double[from.length];
        for (int d = 0; d < glide.length; d++) {
            glide[d] = Math.abs(to[d] - from[d]);
        }
        return new double[][] {glide, answers.get(1).strainAt(site)};
    }

    private static double share(double[] one, double[] other) {
        int more = 0;
        for (int d = 0; d < one.length; d++) {
            more += one[d] > other[d] ? 1 : 0;
        }
        return (double) more / one.length;
    }

    /** The two exercises as planned, the first one first. */
    public List<PlannedExercise> planned() {
        return new ArrayList<>(plan.result().orElseThrow().plan().plan().exercises());
    }
}
