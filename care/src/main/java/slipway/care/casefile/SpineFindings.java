package slipway.care.casefile;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What was found at the spine.
 *
 * @param neckScreened whether the neck was screened for movements that it leads; empty if it was not looked at
 * @param repeated what repeated movements of the low back did to the symptom of the leg, only those tested
 */
public record SpineFindings(Optional<Boolean> neckScreened, Map<Direction, Answer> repeated) {
    public SpineFindings {
        var copy = new EnumMap<Direction, Answer>(Direction.class);
        copy.putAll(repeated);
        repeated = Collections.unmodifiableMap(copy);
    }

    /** A repeated movement. */
    public enum Direction {
        EXTENSION,
        FLEXION,
        SIDE
    }

    /** What it did. */
    public enum Answer {
        /** Eased the symptom or moved it up the leg. */
        EASES,
        /** Worsened it or moved it down the leg. */
        WORSENS,
        NONE
    }

    /** The answer to a repeated movement. */
    public Optional<Answer> find(Direction direction) {
        return Optional.ofNullable(repeated.get(direction));
    }
}
