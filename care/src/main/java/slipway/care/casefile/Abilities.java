package slipway.care.casefile;

import java.util.Optional;
import java.util.Set;
import slipway.exercises.exercise.Exclusion;

/**
 * What the person can do at home; empty if not asked.
 *
 * @param limits what speaks against exercises in this person, in the words of exercise files
 */
public record Abilities(Optional<Boolean> canLieOnFloor, Optional<Boolean> canHoldStrap, Set<Exclusion> limits) {
    public Abilities {
        limits = Set.copyOf(limits);
    }
}
