package slipway.web.gallery;

import java.util.List;
import java.util.Optional;
import slipway.care.figure.ExerciseFigures;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Instructions;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Side;
import slipway.mechanics.motion.Motion;
import slipway.pictures.figure.Figure;
import slipway.pictures.figure.FigureScene;
import slipway.pictures.look.Look;
import slipway.pictures.svg.Words;

/** Pictures of an exercise for a right leg. */
final class Pictures {
    private Pictures() {}

    /** Where it goes to, with its start as a ghost. */
    static String movement(Exercise exercise, Look look, String id) {
        Motion motion = exercise.motion();
        var keys = motion.keys();
        FigureScene scene = keys.size() < 2
                ? ExerciseFigures.still(exercise, keys.get(0).posture(), Side.RIGHT)
                : ExerciseFigures.movement(
                        exercise, keys.get(0).posture(), keys.get(1).posture(), Side.RIGHT);
        String shows = exercise.instructions().steps().get(0).text().in(Language.EN);
        return Figure.of(scene).svg(look, new Words(id, exercise.name().in(Language.EN), shows));
    }

    /** One of its common errors, counted from 0. */
    static Optional<String> error(Exercise exercise, int number, Look look, String id) {
        List<Instructions.CommonError> errors = exercise.instructions().errors();
        if (number < 0 || number >= errors.size()) {
            return Optional.empty();
        }
        FigureScene scene = ExerciseFigures.still(exercise, errors.get(number).wrong(), Side.RIGHT);
        String shows = errors.get(number).text().in(Language.EN);
        return Optional.of(Figure.of(scene)
                .svg(look, new Words(id, exercise.name().in(Language.EN), shows)));
    }
}
