package slipway.pictures.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slipway.pictures.look.Palette;
import slipway.pictures.space.Bounds;
import slipway.pictures.space.Camera;
import slipway.pictures.space.P2;
import slipway.pictures.space.V3;

/**
 * A thing, or a piece of one: a box that stands square in the room.
 *
 * @param low its corner with the smallest coordinates
 * @param high its opposite corner
 */
public record Box(V3 low, V3 high, Material material) {
    /** What a thing is made of; decides colour and how round it is. */
    public enum Material {
        MAT,
        WOOD,
        CLOTH,
        WALL
    }

    public Box {
        if (!(low.x() <= high.x() && low.y() <= high.y() && low.z() <= high.z())) {
            throw new IllegalArgumentException("a box needs its low corner first, was %s, %s".formatted(low, high));
        }
    }

    /** A box around a middle line in depth. */
    public static Box of(double x0, double x1, double y, double halfDepth, double z0, double z1, Material material) {
        return new Box(new V3(x0, y - halfDepth, z0), new V3(x1, y + halfDepth, z1), material);
    }

    public Bounds seenBy(Camera camera) {
        return Bounds.around(corners(camera, 0));
    }

    private List<P2> corners(Camera camera, double inset) {
        var corners = new ArrayList<P2>(8);
        for (int i = 0; i < 8; i++) {
            corners.add(camera.project(new V3(
                    corner((i & 1) == 0, low.x(), high.x(), inset),
                    corner((i & 2) == 0, low.y(), high.y(), inset),
                    corner((i & 4) == 0, low.z(), high.z(), inset))));
        }
        return corners;
    }

    private static double corner(boolean first, double low, double high, double inset) {
        double by = Math.min(inset, 0.49 * (high - low));
        return first ? low + by : high - by;
    }

    /** The outline in the picture, counter-clockwise. */
    List<P2> outline(Camera camera, double inset) {
        List<P2> sorted = corners(camera, inset).stream()
                .sorted(Comparator.comparingDouble(P2::x).thenComparingDouble(P2::y))
                .toList();
        var hull = new ArrayList<P2>(half(sorted));
        var reversed = new ArrayList<>(sorted);
        java.util.Collections.reverse(reversed);
        List<P2> upper = half(reversed);
        hull.addAll(upper.subList(1, Math.max(1, upper.size() - 1)));
        return hull;
    }

    private static List<P2> half(List<P2> sorted) {
        var chain = new ArrayList<P2>();
        for (P2 p : sorted) {
            while (chain.size() > 1 && !turnsLeft(chain.get(chain.size() - 2), chain.get(chain.size() - 1), p)) {
                chain.remove(chain.size() - 1);
            }
            chain.add(p);
        }
        return chain;
    }

    private static boolean turnsLeft(P2 a, P2 b, P2 c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()) > 1e-12;
    }

    /** How far corners are rounded. */
    double rounding() {
        return switch (material) {
            case CLOTH -> 0.022;
            case MAT -> 0.006;
            case WOOD -> 0.005;
            case WALL -> 0.0;
        };
    }

    slipway.pictures.look.Colour colour(Palette palette) {
        return switch (material) {
            case MAT -> palette.mat();
            case WOOD, WALL -> palette.thing();
            case CLOTH -> palette.cloth();
        };
    }
}
