package slipway.documents.sheet;

import slipway.mechanics.body.Side;

/** The limb that a sheet or an exercise is about. On paper it stands in words, never as a letter or a colour. */
public enum BodyPart {
    LEFT_LEG("left-leg"),
    RIGHT_LEG("right-leg"),
    LEFT_ARM("left-arm"),
    RIGHT_ARM("right-arm");

    private final String key;

    BodyPart(String key) {
        this.key = key;
    }

    public static BodyPart leg(Side side) {
        return side == Side.LEFT ? LEFT_LEG : RIGHT_LEG;
    }

    public static BodyPart arm(Side side) {
        return side == Side.LEFT ? LEFT_ARM : RIGHT_ARM;
    }

    /** Ending of the message keys. */
    public String key() {
        return key;
    }
}
