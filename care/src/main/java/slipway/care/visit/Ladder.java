package slipway.care.visit;

import java.util.HashMap;
import java.util.Map;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;

/** How high an exercise stands on the ladder of the catalogue. */
final class Ladder {
    private static final Ladder BUNDLED = new Ladder(Catalogue.bundled());

    private final Map<String, Integer> rungs = new HashMap<>();

    private Ladder(Catalogue catalogue) {
        catalogue.list().forEach(exercise -> climb(catalogue, exercise));
    }

    /** 0 for an exercise that has no easier one; else one more than the highest of its easier ones. */
    static int rung(Exercise exercise) {
        return BUNDLED.rungs.getOrDefault(exercise.id(), 0);
    }

    private int climb(Catalogue catalogue, Exercise exercise) {
        Integer known = rungs.get(exercise.id());
        if (known != null) {
            return known;
        }
        // A circle in the files counts as the ground: a rung must end somewhere.
        rungs.put(exercise.id(), 0);
        int rung = exercise.neighbours().easier().stream()
                .map(catalogue::get)
                .mapToInt(easier -> 1 + climb(catalogue, easier))
                .max()
                .orElse(0);
        rungs.put(exercise.id(), rung);
        return rung;
    }
}
