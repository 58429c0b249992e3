package slipway.care.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.care.casefile.CaseFile;
import slipway.reasoning.dose.DosedExercise;
import slipway.reasoning.plan.JointRange;
import slipway.reasoning.plan.PlannedExercise;
import slipway.reasoning.plan.SiteShare;
import slipway.reasoning.tolerance.SiteTolerance;

/**
 * What would change a plan: the plan again with each input a little different, so that the therapist knows which
 * measurement is worth repeating.
 *
 * @param plan the plan as it is
 * @param outcomes one per input
 */
public record WhatIf(VisitPlan plan, List<Outcome> outcomes) {
    public WhatIf {
        outcomes = List.copyOf(outcomes);
    }

    /**
     * The plan with one input changed.
     *
     * @param what the change in words
     * @param tolerancePct median tolerance at the leading place, % strain above rest; empty if none can be given
     * @param ends furthest angle of the leading joint of each exercise, by its id; absent if it is no longer given
     */
    public record Outcome(String what, Optional<Double> tolerancePct, Map<String, Double> ends) {}

    /**
     * Plans the case and every variation of it.
     *
     * <p>Cost: one plan for each onset angle up and down, each suspected place and the stature up and down.
     *
     * @return empty if the screening stops the plan: then there is nothing to vary
     */
    public static Optional<WhatIf> of(CaseFile file, String version) {
        VisitPlan plan = Visit.plan(file, version);
        if (plan.stopped()) {
            return Optional.empty();
        }
        var outcomes = new ArrayList<Outcome>();
        outcomes.add(outcome("as examined", plan));
        // The same exercises in every line: which of them another input would have chosen is another question.
        CaseFile kept = plan.given().isEmpty() ? file : file.choosing(ids(plan));
        for (Variation variation : Variation.of(kept, plan.sites())) {
            outcomes.add(outcome(variation.what(), Visit.plan(variation.file(), version)));
        }
        return Optional.of(new WhatIf(plan, outcomes));
    }

    private static Outcome outcome(String what, VisitPlan visit) {
        var plan = visit.result().orElseThrow().plan();
        var ends = new LinkedHashMap<String, Double>();
        for (PlannedExercise exercise : plan.plan().exercises()) {
            JointRange lead = exercise.ranges().get(0);
            ends.put(exercise.id(), lead.toDeg());
        }
        // The place with the most weight of those that the model knows.
        Optional<Double> tolerance = plan.sites().stream()
                .filter(SiteShare::modelled)
                .sorted((one, other) -> Double.compare(other.probability(), one.probability()))
                .findFirst()
                .flatMap(site -> plan.tolerance().perSite().stream()
                        .filter(t -> t.site().equals(site.site()))
                        .map(SiteTolerance::medianPct)
                        .findFirst());
        return new Outcome(what, tolerance, ends);
    }

    /** Ids of the exercises of the plan as it is. */
    public List<String> exerciseIds() {
        return ids(plan);
    }

    private static List<String> ids(VisitPlan plan) {
        return plan.given().stream()
                .map(DosedExercise::range)
                .map(range -> range.candidate().id())
                .toList();
    }
}
