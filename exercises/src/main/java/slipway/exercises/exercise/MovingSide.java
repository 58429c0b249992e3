package slipway.exercises.exercise;

import java.util.Arrays;
import java.util.Optional;

/** Which limb moves, seen from the nerve that is treated. */
public enum MovingSide {
    AFFECTED("affected"),
    OTHER("other"),
    BOTH("both"),
    ALTERNATE("alternate"),
    TRUNK("trunk");

    private final String key;

    MovingSide(String key) {
        this.key = key;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** The side with this name in files. */
    public static Optional<MovingSide> find(String key) {
        return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
    }
}
