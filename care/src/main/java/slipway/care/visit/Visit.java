package slipway.care.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.SiteWeight;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.unload.Advice;
import slipway.mechanics.body.Person;
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.dose.ExerciseCandidate;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.irritability.IrritabilityRule;
import slipway.reasoning.plan.ModelStamp;
import slipway.reasoning.plan.PlanRequest;
import slipway.reasoning.plan.PlanResult;
import slipway.reasoning.plan.Planner;
import slipway.reasoning.screening.Screening;
import slipway.reasoning.screening.ScreeningResult;

/** From a case to a plan. The same case and program give the same plan. */
public final class Visit {
    private static final double CM_PER_M = 100;
    private static final Coefficients DATA = Coefficients.load("visit.csv");

    private Visit() {}

    /**
     * The plan of a case.
     *
     * <p>Cost: some hundred postures of the nerve model; a few seconds cold, well under one when warm.
     *
     * @param version of the program, for the stamp of the plan
     * @throws IllegalArgumentException if the case names an exercise that the catalogue does not have
     */
    public static VisitPlan plan(CaseFile file, String version) {
        ScreeningResult screening = Screening.load().evaluate(file.screeningInput());
        ModelStamp stamp = stamp(version);
        boolean stopped = screening.level().blocksPlan();
        List<SiteWeight> sites = stopped ? file.sites() : SiteChoice.of(file);
        if (stopped) {
            return new VisitPlan(
                    file, screening, sites, stamp, Optional.empty(), Map.of(), List.of(), List.of(), unload(file));
        }
        Irritability level =
                IrritabilityRule.judge(DoseMapping.irritability(file)).level();
        var choice = new ExerciseChoice(file, sites, level);
        PlanResult result = Planner.plan(nerve(file), request(file, screening, sites, choice, stamp));
        return withCompanions(file, screening, sites, stamp, result, choice);
    }

    /** None where the plan gives no glide at all: then the person is examined again first. */
    private static VisitPlan withCompanions(
            CaseFile file,
            ScreeningResult screening,
            List<SiteWeight> sites,
            ModelStamp stamp,
            PlanResult result,
            ExerciseChoice choice) {
        int given = result.dose().exercises().size();
        var runnersUp = new ArrayList<>(result.dose().passedOver());
        List<Companion> companions = choice.pickedCompanions();
        if (!choice.picked() && given > 0) {
            CompanionChoice found = choice.companions((int) DATA.value("most-exercises") - given);
            companions = found.chosen();
            runnersUp.addAll(found.passedOver());
        }
        runnersUp.addAll(choice.passedOver());
        return new VisitPlan(
                file,
                screening,
                sites,
                stamp,
                Optional.of(result),
                choice.glides(),
                companions,
                runnersUp,
                unload(file));
    }

    /** The nerve model of this person's body. */
    static NerveModel nerve(CaseFile file) {
        var person = new Person(file.patient().statureCm() / CM_PER_M);
        return new PathwayModel(person, FittedParameters.bundled().standardDraws());
    }

    private static PlanRequest request(
            CaseFile file, ScreeningResult screening, List<SiteWeight> sites, ExerciseChoice choice, ModelStamp stamp) {
        return new PlanRequest(
                screening,
                NeuralMapping.of(file, sites),
                DoseMapping.irritability(file),
                DoseMapping.dose(file),
                candidates(choice.glides()),
                choice.most(),
                stamp);
    }

    private static ModelStamp stamp(String version) {
        return new ModelStamp(
                version,
                FittedParameters.sha256(),
                FittedParameters.bundled().evidenceSha256(),
                FittedParameters.DRAWS,
                FittedParameters.SEED);
    }

    private static List<ExerciseCandidate> candidates(Map<String, Exercise> exercises) {
        var candidates = new ArrayList<ExerciseCandidate>();
        exercises.values().forEach(exercise -> Candidates.of(exercise).ifPresent(candidates::add));
        return candidates;
    }

    private static List<Advice> unload(CaseFile file) {
        Set<String> habits = Set.copyOf(file.episode().history().habits());
        return Advice.list().stream()
                .filter(advice -> advice.triggers().stream().anyMatch(habits::contains))
                .toList();
    }
}
