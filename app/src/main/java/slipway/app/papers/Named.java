package slipway.app.papers;

import org.jspecify.annotations.Nullable;
import slipway.app.console.BadInputException;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Instructions;

/** Exercises that the user names. */
final class Named {
    private Named() {}

    /** The exercise of this id. */
    static Exercise exercise(String id) {
        try {
            return Catalogue.bundled().get(id);
        } catch (IllegalArgumentException e) {
            throw new BadInputException(String.valueOf(e.getMessage()));
        }
    }

    /** What a picture of the exercise shows: the step that leads to the pose, or else the first that moves. */
    static String shows(Exercise exercise, @Nullable String pose) {
        var steps = exercise.instructions().steps();
        String first = exercise.movement().poses().get(0).id();
        return steps.stream()
                .filter(step -> step.pose()
                        .filter(id -> pose == null ? !id.equals(first) : id.equals(pose))
                        .isPresent())
                .findFirst()
                .map(Instructions.Step::text)
                .orElse(steps.get(0).text())
                .en();
    }
}
