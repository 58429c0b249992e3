package slipway.exercises.exercise;

import java.util.Arrays;
import java.util.Optional;

/** Where a prop is. */
public enum PropPlace {
    AROUND_FOREFOOT("around forefoot"),
    UNDER_HEAD("under head"),
    UNDER_KNEES("under knees"),
    UNDER_KNEE("under knee"),
    BETWEEN_KNEES("between knees"),
    UNDER_BELLY("under belly"),
    UNDER_ANKLES("under ankles"),
    UNDER_HEEL("under heel"),
    UNDER_FOOT("under foot"),
    UNDER_FOREFOOT("under forefoot"),
    UNDER_SEAT("under seat"),
    IN_FRONT("in front"),
    BEHIND("behind"),
    BESIDE("beside");

    private final String key;

    PropPlace(String key) {
        this.key = key;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** The place with this name in files. */
    public static Optional<PropPlace> find(String key) {
        return Arrays.stream(values()).filter(value -> value.key.equals(key)).findFirst();
    }
}
