package slipway.pictures.figure;

import slipway.mechanics.body.Prop;
import slipway.mechanics.body.Support;

/** A thing and where it is. */
public enum PropUse {
    STRAP(Prop.STRAP),
    PILLOW_UNDER_HEAD(Prop.PILLOW),
    PILLOW_UNDER_KNEES(Prop.PILLOW),
    PILLOW_UNDER_ANKLES(Prop.PILLOW),
    PILLOW_BETWEEN_KNEES(Prop.PILLOW),
    CHAIR(Prop.CHAIR),
    WALL(Prop.WALL),
    TOWEL_UNDER_HEEL(Prop.TOWEL),
    TABLE(Prop.TABLE),
    STEP(Prop.STEP);

    private final Prop prop;

    PropUse(Prop prop) {
        this.prop = prop;
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
