package slipway.exercises.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import slipway.mechanics.body.Posture;
import slipway.mechanics.motion.Motion;

/**
 * A motion with position, props, words, cautions and a usual dose.
 *
 * @param id name in files, lower case with hyphens
 * @param name what the patient reads
 * @param use what it is for and against
 * @param setting where and with what
 * @param movement how it goes
 * @param instructions what the patient reads
 * @param dose how much unless planned otherwise
 * @param neighbours the rungs beside it
 */
public record Exercise(
        String id,
        Phrase name,
        Use use,
        Setting setting,
        Movement movement,
        Instructions instructions,
        Dose dose,
        Neighbours neighbours) {
    /** Ids of the exercises that ask less and more. */
    public record Neighbours(List<String> easier, List<String> harder) {
        public Neighbours {
            easier = List.copyOf(easier);
            harder = List.copyOf(harder);
        }
    }

    /** What it is for. */
    public Purpose purpose() {
        return use.purpose();
    }

    /**
     * One repetition as a motion.
     *
     * @param chosenDeg the angles that the plan chose; those that it left out are as shown in pictures
     * @throws IllegalArgumentException if an angle is not open in this exercise or outside its range
     */
    public Motion motion(Map<BodyJoint, Double> chosenDeg) {
        return movement.motion(chosenDeg);
    }

    /** One repetition with the angles shown in pictures. */
    public Motion motion() {
        return movement.motion(Map.of());
    }

    /** One key posture with the chosen angles. */
    public Posture posture(String pose, Map<BodyJoint, Double> chosenDeg) {
        return movement.pose(pose).posture(chosenDeg);
    }

    /** Everything that a patient reads, in order. */
    public List<Phrase> patientTexts() {
        var texts = new ArrayList<Phrase>();
        texts.add(name);
        instructions.steps().forEach(step -> texts.add(step.text()));
        texts.addAll(instructions.feel());
        texts.addAll(instructions.stop());
        instructions.errors().forEach(error -> texts.add(error.text()));
        texts.addAll(instructions.cautions());
        return List.copyOf(texts);
    }
}
