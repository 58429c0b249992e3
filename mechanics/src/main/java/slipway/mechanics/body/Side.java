package slipway.mechanics.body;

/** Side of the body. */
public enum Side {
    LEFT,
    RIGHT;

    /** The other side. */
    public Side opposite() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
