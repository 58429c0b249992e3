package slipway.pictures.figure;

import java.util.Arrays;
import slipway.mechanics.body.Prop;
import slipway.mechanics.body.Support;

/** A thing and where it is. */
public enum PropUse {
    STRAP(Prop.STRAP, "around forefoot"),
    PILLOW_UNDER_HEAD(Prop.PILLOW, "under head"),
    PILLOW_UNDER_KNEES(Prop.PILLOW, "under knees"),
    PILLOW_UNDER_ANKLES(Prop.PILLOW, "under ankles"),
    PILLOW_UNDER_BELLY(Prop.PILLOW, "under belly"),
    PILLOW_BETWEEN_KNEES(Prop.PILLOW, "between knees"),
    CHAIR(Prop.CHAIR, "under seat"),
    WALL(Prop.WALL, "behind"),
    WALL_IN_FRONT(Prop.WALL, "in front"),
    TOWEL_UNDER_HEEL(Prop.TOWEL, "under heel"),
    TABLE(Prop.TABLE, "in front"),
    STEP(Prop.STEP, "under foot");

    private final Prop prop;
    private final String place;

    PropUse(Prop prop, String place) {
        this.prop = prop;
        this.place = place;
    }

    /** Where a thing is, from the words of an exercise; a place that is not drawn apart is drawn as usual. */
    public static PropUse of(Prop prop, String place, Support support) {
        if (prop == Prop.PILLOW && place.equals("under knee")) {
            return PILLOW_UNDER_KNEES;
        }
        return Arrays.stream(values())
                .filter(use -> use.prop == prop && use.place.equals(place))
                .findFirst()
                .orElseGet(() -> usual(prop, support));
    }

    public Prop prop() {
        return prop;
    }

    /** Where a thing usually is in a position, when a file names only the thing. */
    public static PropUse usual(Prop prop, Support support) {
        return switch (prop) {
            case STRAP -> STRAP;
            case CHAIR -> CHAIR;
            case WALL -> WALL;
            case TOWEL -> TOWEL_UNDER_HEEL;
            case TABLE -> TABLE;
            case STEP -> STEP;
            case PILLOW -> support == Support.PRONE ? PILLOW_UNDER_ANKLES : PILLOW_UNDER_HEAD;
        };
    }
}
