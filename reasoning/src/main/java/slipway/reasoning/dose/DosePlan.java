package slipway.reasoning.dose;

import java.util.List;
import java.util.Optional;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Reason;

/**
 * The first exercises, in the order in which they are tried, and those that are not given.
 *
 * @param site the modelled site that is suspected most, where glide is read
 * @param passedOver those that might have been given, but the plan already has others in their place
 * @param notes what holds for all of them
 */
public record DosePlan(
        Optional<Site> site,
        List<DosedExercise> exercises,
        List<Refusal> refused,
        List<Refusal> passedOver,
        List<Reason> notes) {
    public DosePlan {
        exercises = List.copyOf(exercises);
        refused = List.copyOf(refused);
        passedOver = List.copyOf(passedOver);
        notes = List.copyOf(notes);
    }
}
