package slipway.reasoning.response.propose;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import slipway.reasoning.response.estimate.Prior;

/**
 * What was given for home.
 *
 * @param prior what the examination said about tolerance; empty if it gave none: then the rules decide alone
 * @param seed of the estimate of this person
 */
public record FollowedPlan(List<FollowedExercise> exercises, Optional<Prior> prior, long seed) {
    public FollowedPlan {
        exercises = List.copyOf(exercises);
        var seen = new HashSet<String>();
        for (FollowedExercise exercise : exercises) {
            if (!seen.add(exercise.id())) {
                throw new IllegalArgumentException("the exercise " + exercise.id() + " is given twice");
            }
        }
    }

    /** The same with what was set since in place of what was given, the newest last. */
    public FollowedPlan with(List<DoseSet> sets) {
        var now = new ArrayList<>(exercises);
        for (DoseSet set : sets) {
            now.replaceAll(known -> known.id().equals(set.exercise().id()) ? set.exercise() : known);
        }
        return new FollowedPlan(now, prior, seed);
    }

    /** The exercise of this id. */
    public Optional<FollowedExercise> find(String id) {
        return exercises.stream().filter(exercise -> exercise.id().equals(id)).findFirst();
    }
}
