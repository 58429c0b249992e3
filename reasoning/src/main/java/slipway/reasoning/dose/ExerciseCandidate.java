package slipway.reasoning.dose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
 * @param ease a held joint that may be held nearer to its easiest angle: from the usual angle, which the base has, to
 *     the easiest
 */
public record ExerciseCandidate(
        String id,
        String position,
        Support support,
        Posture base,
        List<Movement> moves,
        Purpose purpose,
        Optional<Movement> ease) {
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
        for (Movement move : moves) {
            if (ease.filter(held -> held.joint() == move.joint() && held.limb() == move.limb())
                    .isPresent()) {
                throw new IllegalArgumentException("the exercise " + id + " both moves and holds the "
                        + move.joint().key());
            }
        }
    }

    /** An exercise whose held joints stay as they are. */
    public ExerciseCandidate(
            String id, String position, Support support, Posture base, List<Movement> moves, Purpose purpose) {
        this(id, position, support, base, moves, purpose, Optional.empty());
    }

    /** The same exercise with the held joint at each angle that may be tried, the usual one first. */
    List<ExerciseCandidate> eased() {
        if (ease.isEmpty()) {
            return List.of(this);
        }
        Movement held = ease.get();
        double step = DoseData.value("ease-step") * held.direction();
        var eased = new ArrayList<ExerciseCandidate>();
        for (double angle = held.fromDeg(); held.direction() * (held.toDeg() - angle) >= 0; angle += step) {
            eased.add(new ExerciseCandidate(id, position, support, held.at(base, angle), moves, purpose, ease));
        }
        return eased;
    }

    /** The joint that leads. */
    public Movement lead() {
        return moves.get(0);
    }

    /** Whether the same joint of the same limb leads another exercise. */
    boolean leadsLike(ExerciseCandidate other) {
        return lead().joint() == other.lead().joint()
                && lead().limb() == other.lead().limb();
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
