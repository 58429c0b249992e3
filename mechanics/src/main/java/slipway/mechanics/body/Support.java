package slipway.mechanics.body;

import java.util.Arrays;
import java.util.Optional;

/** What carries the body in a position; the figure engine rests the body on it. */
public enum Support {
    LYING("lying"),
    SIDE_LYING("side-lying"),
    PRONE("prone"),
    SITTING("sitting"),
    LONG_SITTING("long sitting"),
    STANDING("standing"),
    KNEELING("kneeling"),
    ALL_FOURS("all fours");

    private final String key;

    Support(String key) {
        this.key = key;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** The support with this name in files. */
    public static Optional<Support> find(String key) {
        return Arrays.stream(values())
                .filter(support -> support.key.equals(key))
                .findFirst();
    }
}
