package slipway.mechanics.body;

import java.util.Arrays;
import java.util.Optional;

/** A thing that an exercise needs and a picture shows. */
public enum Prop {
    STRAP("strap"),
    PILLOW("pillow"),
    CHAIR("chair"),
    WALL("wall"),
    TOWEL("towel"),
    TABLE("table"),
    STEP("step");

    private final String key;

    Prop(String key) {
        this.key = key;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** The prop with this name in files. */
    public static Optional<Prop> find(String key) {
        return Arrays.stream(values()).filter(prop -> prop.key.equals(key)).findFirst();
    }
}
