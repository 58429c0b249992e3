package slipway.exercises.exercise;

import java.util.Arrays;
import java.util.Optional;

/** What an exercise is for. */
public enum Purpose {
    GLIDE("glide"),
    STRETCH("stretch"),
    STRENGTH("strength"),
    TRUNK_CONTROL("trunk control"),
    DIRECTIONAL("directional"),
    WALKING("walking");

    private final String key;

    Purpose(String key) {
        this.key = key;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** The purpose with this name in files. */
    public static Optional<Purpose> find(String key) {
        return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
    }
}
