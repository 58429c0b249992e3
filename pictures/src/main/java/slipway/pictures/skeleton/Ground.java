package slipway.pictures.skeleton;

/**
 * What the body finds under it.
 *
 * @param ownFootSettles whether the own foot may be laid flat where it rests; false while the ankle is what moves
 * @param otherFootSettles the same for the other foot
 * @param headOnPillow whether a pillow carries the head, which then keeps its angle
 * @param feetOverEnd whether a lying body's feet reach over the end of what it lies on
 */
public record Ground(boolean ownFootSettles, boolean otherFootSettles, boolean headOnPillow, boolean feetOverEnd) {
    /** A floor on which everything may settle. */
    public static final Ground FLOOR = new Ground(true, true, false, false);
}
