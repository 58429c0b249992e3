package slipway.mechanics.nerve;

import java.util.Arrays;
import java.util.Optional;

/** A stretch of the pathway between two landmarks; places are given as a fraction of one, from its proximal end. */
public enum Segment {
    /** Brainstem to conus. */
    CORD("cord"),
    /** Conus to foramen. */
    CANAL("canal"),
    /** Foramen to hip joint. */
    PELVIS("pelvis"),
    /** Hip joint to knee joint. */
    THIGH("thigh"),
    /** Knee joint to ankle joint. */
    SHANK("shank"),
    /** Ankle joint to the ends. */
    FOOT("foot");

    private final String key;

    Segment(String key) {
        this.key = key;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** The segment with this name in files. */
    public static Optional<Segment> find(String key) {
        return Arrays.stream(values())
                .filter(segment -> segment.key.equals(key))
                .findFirst();
    }
}
