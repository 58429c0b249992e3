package slipway.care.visit;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.SiteWeight;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.unload.Advice;
import slipway.mechanics.pathway.PathwayModel;
import slipway.reasoning.dose.Dose;
import slipway.reasoning.dose.DosePlan;
import slipway.reasoning.dose.DosedExercise;
import slipway.reasoning.dose.Refusal;
import slipway.reasoning.plan.ModelStamp;
import slipway.reasoning.plan.PlanResult;
import slipway.reasoning.plan.Planner;
import slipway.reasoning.screening.ScreeningResult;
import slipway.reasoning.tolerance.NeuralFindings;

/**
 * What a visit comes to.
 *
 * @param file the case
 * @param screening what the screening said, with the words for a letter
 * @param sites suspected places that the plan rests on, the therapist's own or located from the findings
 * @param stamp which model and data made it
 * @param result the plan and the postures behind it; empty if the screening stops every plan
 * @param exercises the exercises that were put before the range design, by id
 * @param companions exercises that go with the glides, dosed by their own rules
 * @param runnersUp exercises of the catalogue that were looked at but not chosen, each with the first reason; empty if
 *     the therapist has chosen
 * @param unload what to change in the day, not counted as exercise
 */
public record VisitPlan(
        CaseFile file,
        ScreeningResult screening,
        List<SiteWeight> sites,
        ModelStamp stamp,
        Optional<PlanResult> result,
        Map<String, Exercise> exercises,
        List<Companion> companions,
        List<Refusal> runnersUp,
        List<Advice> unload) {
    public VisitPlan {
        sites = List.copyOf(sites);
        runnersUp = List.copyOf(runnersUp);
        companions = List.copyOf(companions);
        unload = List.copyOf(unload);
    }

    /** The exercises that are given, with their ranges and doses; none when the plan is stopped. */
    public List<DosedExercise> given() {
        return result.map(found -> found.dose().exercises()).orElse(List.of());
    }

    /** The same visit with only some of its exercises given: those that were tried in the room and released. */
    public VisitPlan only(Collection<String> ids) {
        return withGiven(given().stream()
                .filter(dosed -> ids.contains(dosed.range().candidate().id()))
                .toList());
    }

    /** The same visit with other doses for some of its exercises, by id: those that were set since. */
    public VisitPlan dosed(Map<String, Dose> doses) {
        return withGiven(given().stream()
                .map(dosed -> new DosedExercise(
                        dosed.range(),
                        doses.getOrDefault(dosed.range().candidate().id(), dosed.dose())))
                .toList());
    }

    private VisitPlan withGiven(List<DosedExercise> given) {
        Optional<PlanResult> other = result.map(found -> new PlanResult(
                found.plan(),
                new DosePlan(
                        found.dose().site(),
                        given,
                        found.dose().refused(),
                        found.dose().passedOver(),
                        found.dose().notes()),
                found.tolerance()));
        return new VisitPlan(file, screening, sites, stamp, other, exercises, companions, runnersUp, unload);
    }

    /** The same visit with nothing given: what is only proposed is no part of what the person got. */
    public VisitPlan withoutExercises() {
        VisitPlan none = only(List.of());
        return new VisitPlan(file, screening, sites, stamp, none.result(), exercises, List.of(), List.of(), List.of());
    }

    /**
     * What is known now, with what was given on an earlier plan; nothing is given if the screening stops every plan now.
     *
     * @param given the plan that the person has
     */
    public VisitPlan giving(VisitPlan given) {
        return stopped()
                ? this
                : new VisitPlan(
                        file,
                        screening,
                        sites,
                        given.stamp(),
                        given.result(),
                        given.exercises(),
                        given.companions(),
                        given.runnersUp(),
                        given.unload());
    }

    /** Sentences that go with the plan, or with its absence. */
    public List<String> cautions() {
        List<String> cautions =
                result.map(found -> found.plan().cautions()).orElseGet(() -> Planner.cautionsWhenStopped(screening));
        return Stream.of(cautions.stream(), leftOut().stream(), crossedRaise().stream())
                .flatMap(sentences -> sentences)
                .distinct()
                .toList();
    }

    private Optional<String> crossedRaise() {
        return !stopped() && neural().crossedPositive()
                ? Optional.of("Raising the other leg brought out the symptom: no exercise moves that leg instead.")
                : Optional.empty();
    }

    /** Joints of the tests and the exercises that the nerve model leaves out, in a sentence; empty if there are none. */
    private Optional<String> leftOut() {
        var joints = new TreeSet<String>();
        if (!stopped()) {
            file.examination().tests().forEach(test -> joints.addAll(PathwayModel.notModelled(test.reached())));
            given().forEach(dosed ->
                    joints.addAll(PathwayModel.notModelled(dosed.range().end())));
        }
        return joints.isEmpty()
                ? Optional.empty()
                : Optional.of("The nerve model leaves out %s: what these joints do to the nerve is not in the numbers."
                        .formatted(String.join(", ", joints)));
    }

    /** The text of an exercise of this plan. */
    public Exercise exercise(String id) {
        Exercise exercise = exercises.get(id);
        if (exercise == null) {
            throw new IllegalArgumentException("the plan has no exercise " + id);
        }
        return exercise;
    }

    /** What the examination says about the tolerance, as the estimate got it. */
    public NeuralFindings neural() {
        return NeuralMapping.of(file, sites);
    }

    /** Whether the screening stops every plan: emergency, urgent or a question left open. */
    public boolean stopped() {
        return result.isEmpty();
    }
}
