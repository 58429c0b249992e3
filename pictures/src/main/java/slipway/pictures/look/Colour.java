package slipway.pictures.look;

import java.util.Locale;

/**
 * A colour.
 *
 * @param rgb red, green, blue as 0xRRGGBB
 */
public record Colour(int rgb) {
    public Colour {
        if (rgb < 0 || rgb > 0xFFFFFF) {
            throw new IllegalArgumentException("a colour must be within 0x000000 and 0xFFFFFF, was " + rgb);
        }
    }

    /** This colour with a share (0 to 1) of another one mixed in. */
    public Colour mixed(Colour other, double share) {
        int mixed = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            int a = (rgb >> shift) & 0xFF;
            int b = (other.rgb >> shift) & 0xFF;
            mixed |= (int) Math.round(a + share * (b - a)) << shift;
        }
        return new Colour(mixed);
    }

    /** The grey of the same lightness (luma of ITU-R BT.709). */
    public Colour grey() {
        double luma = 0.2126 * ((rgb >> 16) & 0xFF) + 0.7152 * ((rgb >> 8) & 0xFF) + 0.0722 * (rgb & 0xFF);
        int level = (int) Math.round(luma);
        return new Colour(level << 16 | level << 8 | level);
    }

    /** As SVG writes it. */
    public String hex() {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }
}
