package slipway.pictures.skeleton;

import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/**
 * A piece of flesh.
 *
 * @param depth half extent along the front of the axes
 * @param width half extent along the out of the axes
 * @param along half extent along the up of the axes
 */
public record Ellipsoid(V3 centre, Frame axes, double depth, double width, double along) {

    static Ellipsoid ball(V3 centre, double radius) {
        return new Ellipsoid(centre, Frame.standing(), radius, radius, radius);
    }

    /** How far the surface reaches from the centre in a direction of length 1. */
    public double reach(V3 direction) {
        double f = depth * axes.front().dot(direction);
        double o = width * axes.out().dot(direction);
        double u = along * axes.up().dot(direction);
        return Math.sqrt(f * f + o * o + u * u);
    }

    /** The point of the surface that lies furthest in a direction of length 1. */
    public V3 furthest(V3 direction) {
        double reach = Math.max(1e-12, reach(direction));
        return axes.at(
                centre,
                depth * depth * axes.front().dot(direction) / reach,
                width * width * axes.out().dot(direction) / reach,
                along * along * axes.up().dot(direction) / reach);
    }

    /** The smallest extent in a direction that counts as up. */
    double lowest(V3 up) {
        return centre.dot(up) - reach(up);
    }
}
