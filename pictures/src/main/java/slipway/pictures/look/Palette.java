package slipway.pictures.look;

/**
 * The colours of the page and of things.
 *
 * @param paper ground of the page
 * @param ink lines and words
 * @param soft lines and words of less weight
 * @param accent the one thing to look at: arrow, strap, site
 * @param mat what one lies on
 * @param thing chairs, tables, walls
 * @param cloth pillows, towels
 */
public record Palette(Colour paper, Colour ink, Colour soft, Colour accent, Colour mat, Colour thing, Colour cloth) {
    public static final Palette PAPER = new Palette(
            new Colour(0xfaf8f3),
            new Colour(0x22303a),
            new Colour(0x6d7b83),
            new Colour(0xb3472f),
            new Colour(0xb9c7bd),
            new Colour(0xc3b295),
            new Colour(0xece6d8));

    public static final Palette DARK = new Palette(
            new Colour(0x1b2226),
            new Colour(0x0e1417),
            new Colour(0x93a3ab),
            new Colour(0xff9a7a),
            new Colour(0x4f6157),
            new Colour(0x8a7c64),
            new Colour(0xc9c4b8));

    /** Colour of words and thin lines: ink, or on a dark page something light. */
    public Colour words() {
        boolean dark = (paper.grey().rgb() & 0xFF) < 128;
        return dark ? cloth : ink;
    }

    /** The same lightness without colour. */
    public Palette grey() {
        return new Palette(
                new Colour(0xffffff),
                ink.grey(),
                soft.grey(),
                accent.grey().mixed(new Colour(0), 0.55),
                mat.grey(),
                thing.grey(),
                cloth.grey());
    }
}
