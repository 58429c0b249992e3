package slipway.pictures.drawing;

import java.util.List;
import slipway.pictures.look.Colour;
import slipway.pictures.look.Look;
import slipway.pictures.skeleton.Solid;
import slipway.pictures.space.Camera;
import slipway.pictures.svg.PathData;
import slipway.pictures.svg.Svg;

/**
 * What every drawing of one picture shares.
 *
 * @param svg the picture
 * @param camera how it is seen
 * @param look its colours
 */
record Pen(Svg svg, Camera camera, Look look) {
    /** Line widths in units of the picture; half of an outline disappears under the fill. */
    static final String NEAR_LINE = "8";

    static final String FAR_LINE = "6";

    Pen seenBy(Camera other) {
        return new Pen(svg, other, look);
    }

    /** Outlines that later fills cover half. */
    void strokes(List<String> paths, Colour colour, String width) {
        svg.open("fill", "none", "stroke", colour.hex(), "stroke-width", width, "stroke-linejoin", "round");
        paths.forEach(path -> svg.path(path));
        svg.close();
    }

    void fills(List<String> paths, Colour colour) {
        svg.open("fill", colour.hex());
        paths.forEach(path -> svg.path(path));
        svg.close();
    }

    String closed(Solid solid) {
        return PathData.closedCurve(Outline.of(solid, camera));
    }

    String openFrom(Solid solid, int skipped) {
        return PathData.openCurve(Outline.open((Solid.Tube) solid, camera, skipped));
    }

    List<String> closed(List<Solid> solids) {
        return solids.stream().map(this::closed).toList();
    }
}
