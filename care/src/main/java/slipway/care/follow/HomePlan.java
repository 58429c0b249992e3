package slipway.care.follow;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.response.estimate.Prior;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.propose.FollowedExercise;
import slipway.reasoning.response.propose.FollowedPlan;

/**
 * What a person gets for home on one plan, with all that is needed to follow it: doses, ceilings and the loads on each rung
 * as they were when the plan was made. It is kept with the plan, so that what the person does and what is answered stay the
 * same when the nerve model changes, and no posture has to be solved to answer a report.
 *
 * @param seed of the estimate of this person
 */
public record HomePlan(Irritability irritability, List<HomeExercise> exercises, long seed) {
    public HomePlan {
        exercises = List.copyOf(exercises);
        var seen = new HashSet<String>();
        for (HomeExercise exercise : exercises) {
            if (!seen.add(exercise.id())) {
                throw new IllegalArgumentException("the exercise " + exercise.id() + " is given twice");
            }
        }
    }

    /** The same with only some of its glides: those that were tried in the room and released. Companions stay. */
    public HomePlan only(Collection<String> ids) {
        return with(exercises.stream().filter(each -> each.companion() || ids.contains(each.id())));
    }

    /** The same with other ceilings for some of its glides, by id. */
    public HomePlan within(Map<String, Ceiling> ceilings) {
        return with(exercises.stream()
                .map(each -> each.companion() || !ceilings.containsKey(each.id())
                        ? each
                        : each.within(ceilings.get(each.id()))));
    }

    private HomePlan with(Stream<HomeExercise> others) {
        return new HomePlan(irritability, others.toList(), seed);
    }

    /** The glide of this id, as it was given; empty if there is none. */
    public Optional<HomeExercise> glide(String id) {
        return exercises.stream()
                .filter(each -> !each.companion() && each.id().equals(id))
                .findFirst();
    }

    /** With its ladders, and what is believed before the first report. */
    public FollowedPlan followed() {
        OptionalDouble sd = exercises.stream()
                .flatMapToDouble(each -> each.logSd().stream())
                .max();
        Optional<Prior> prior =
                sd.isPresent() ? Optional.of(Prior.of(0, sd.getAsDouble(), irritability)) : Optional.empty();
        return new FollowedPlan(exercises.stream().map(HomeExercise::followed).toList(), prior, seed);
    }

    /** A glide with a dose that was set anew, its ladder and its loads; empty if the plan does not give it as a glide. */
    public Optional<FollowedExercise> set(String exerciseId, HomeSetting setting) {
        return glide(exerciseId)
                .map(given -> given.following(
                        HomeDose.of(setting.dose(given.dose().secondsPerDirection())), setting.ceiling()));
    }
}
