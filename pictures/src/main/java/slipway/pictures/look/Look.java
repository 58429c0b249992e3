package slipway.pictures.look;

/**
 * How a figure looks.
 *
 * @param palette colours of page and things
 * @param skin colour of the skin
 * @param hair colour of the hair
 * @param cut shape of the hair
 * @param top colour of the shirt
 * @param shorts colour of the shorts
 */
public record Look(Palette palette, Colour skin, Colour hair, Cut cut, Colour top, Colour shorts) {
    /** Shape of the hair. */
    public enum Cut {
        SHORT,
        TIED
    }

    private static final Colour SAND = new Colour(0xd9b79a);
    private static final Colour BROWN = new Colour(0x5a4636);

    /** Screens and colour print. */
    public static Look paper() {
        return new Look(Palette.PAPER, SAND, BROWN, Cut.SHORT, new Colour(0x6f8f9e), new Colour(0x38505c));
    }

    /** Black-and-white print. */
    public static Look print() {
        return paper().grey();
    }

    /** Dark screens: the body keeps its colours, the ground is dark. */
    public static Look dark() {
        return new Look(
                Palette.DARK, SAND, new Colour(0x7a6049), Cut.SHORT, new Colour(0x7fa0af), new Colour(0x4f6d7b));
    }

    /** This look without colour. */
    public Look grey() {
        return new Look(palette.grey(), skin.grey(), hair.grey(), cut, top.grey(), shorts.grey());
    }

    /** This look with another skin and hair. */
    public Look with(Colour otherSkin, Colour otherHair, Cut otherCut) {
        return new Look(palette, otherSkin, otherHair, otherCut, top, shorts);
    }

    /** A colour of something further away: nearer to the ground of the page. */
    public Colour far(Colour colour) {
        return colour.mixed(palette.paper(), 0.32);
    }
}
