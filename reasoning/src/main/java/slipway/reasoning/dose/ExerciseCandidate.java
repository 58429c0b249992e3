package slipway.reasoning.dose;

import java.util.List;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Support;
import slipway.reasoning.tolerance.Movement;

/**
 * An exercise that may be given: where the body is and what moves, seen from the affected side.
 *
 * @param id of the exercise in its catalogue
 * @param position name of the position, for the therapist
 * @param support what carries the body
 * @param base the posture of everything that does not move; the moving joints are set by {@code moves}
 * @param moves the joints that move together, the leading one first, each from its start to the furthest that the
 *     exercise would go; a joint that moves back to let the nerve go is one of them
 */
public record ExerciseCandidate(
        String id, String position, Support support, Posture base, List<Movement> moves, Purpose purpose) {
    public ExerciseCandidate {
        moves = List.copyOf(moves);
        if (id.isBlank() || moves.isEmpty()) {
            throw new IllegalArgumentException(
                    "an exercise needs an id and at least one moving joint, was \"%s\" with %d"
                            .formatted(id, moves.size()));
        }
        long joints = moves.stream()
                .map(move -> move.joint() + " " + move.limb())
                .distinct()
                .count();
        if (joints < moves.size()) {
            throw new IllegalArgumentException("the exercise " + id + " moves a joint twice");
        }
    }

    /** The joint that leads. */
    public Movement lead() {
        return moves.get(0);
    }

    /** The posture in which every repetition begins. */
    public Posture start() {
        Posture start = base;
        for (Movement move : moves) {
            start = move.at(start, move.fromDeg());
        }
        return start;
    }
}
