package slipway.reasoning.plan;

import java.util.List;
import slipway.reasoning.dose.Refusal;

/** The exercises of a plan in the order in which they are tried, and those that are not given. */
public record ExercisePlan(List<PlannedExercise> exercises, List<Refusal> refused) {
    public ExercisePlan {
        exercises = List.copyOf(exercises);
        refused = List.copyOf(refused);
    }
}
