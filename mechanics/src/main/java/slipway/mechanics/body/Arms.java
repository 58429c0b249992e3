package slipway.mechanics.body;

import java.util.Arrays;
import java.util.Optional;

/**
 * Where the hands are. Arms have few joint angles of their own in a posture; for leg exercises it is enough to know what
 * the hands do, and the figure engine brings them there.
 */
public enum Arms {
    ALONG_SIDES("along the sides"),
    ON_THIGHS("hands on thighs"),
    ON_HIPS("hands on hips"),
    FOLDED("arms folded"),
    UNDER_HEAD("hand under head"),
    OVERHEAD("arms overhead"),
    FORWARD("arms forward"),
    SWINGING("arms swing"),
    BEHIND_BACK("hands behind back"),
    HOLD_STRAP("hands hold strap"),
    BEHIND_THIGH("hands behind thigh"),
    HOLD_KNEE("hands hold knee"),
    HOLD_KNEES("hands hold both knees"),
    HOLD_ANKLE("hand holds ankle"),
    ON_CHAIR("hands on chair"),
    ON_WALL("hands on wall"),
    ON_FLOOR("hands on floor"),
    FOREARMS_ON_FLOOR("forearms on floor");

    private final String key;

    Arms(String key) {
        this.key = key;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    /** The pose with this name in files. */
    public static Optional<Arms> find(String key) {
        return Arrays.stream(values()).filter(arms -> arms.key.equals(key)).findFirst();
    }
}
