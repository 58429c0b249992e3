package slipway.pictures.figure;

import java.util.Arrays;
import java.util.Optional;
import slipway.mechanics.body.Support;
import slipway.pictures.space.Camera;

/** From where a figure is seen. The own side is turned to the viewer. */
public enum View {
    SIDE("side"),
    /** From in front of someone upright; from the feet of someone who lies. */
    FRONT("front"),
    TOP("top"),
    /** From the side and above, for lying on the side. */
    RAISED("raised");

    private final String key;

    View(String key) {
        this.key = key;
    }

    /** The name used in files. */
    public String key() {
        return key;
    }

    Camera camera() {
        return switch (this) {
            case SIDE -> Camera.raised(0);
            case FRONT -> Camera.facing();
            case TOP -> Camera.raised(Math.PI / 2);
            case RAISED -> Camera.raised(Math.toRadians(38));
        };
    }

    /** The view with this name in files. */
    public static Optional<View> find(String key) {
        return Arrays.stream(values()).filter(view -> view.key.equals(key)).findFirst();
    }

    /** The view in which a position is usually read best. */
    public static View usual(Support support) {
        return support == Support.SIDE_LYING ? RAISED : SIDE;
    }
}
