package slipway.care.bench;

import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Support;

/**
 * A posture of the bench with the named position that it started from.
 *
 * @param position says what carries the body
 * @param posture all joint angles
 */
public record Stance(Position position, Posture posture) {
    /** A position as it is. */
    public static Stance of(Position position) {
        return new Stance(position, position.posture());
    }

    /** What carries the body in this position. */
    public Support support() {
        return switch (position.name()) {
            case "lying", "lying knees bent" -> Support.LYING;
            case "sitting", "slump" -> Support.SITTING;
            case "standing", "standing bend" -> Support.STANDING;
            default ->
                Support.find(position.name())
                        .orElseThrow(() -> new IllegalStateException("nothing carries the body in " + position.name()));
        };
    }

    /** Where the hands usually are on this support. */
    public Arms arms() {
        return switch (support()) {
            case LYING, STANDING, KNEELING -> Arms.ALONG_SIDES;
            case SITTING -> Arms.ON_THIGHS;
            case SIDE_LYING, PRONE -> Arms.UNDER_HEAD;
            case LONG_SITTING, ALL_FOURS -> Arms.ON_FLOOR;
        };
    }
}
