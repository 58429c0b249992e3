package slipway.exercises.exercise;

import java.util.Arrays;
import java.util.Optional;

/** What the person can be on. */
public enum Surface {
    BED("bed"),
    FLOOR("floor"),
    CHAIR("chair"),
    GROUND("ground");

    private final String key;

    Surface(String key) {
        this.key = key;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** The surface with this name in files. */
    public static Optional<Surface> find(String key) {
        return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
    }
}
