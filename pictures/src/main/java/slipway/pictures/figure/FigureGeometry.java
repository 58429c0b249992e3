package slipway.pictures.figure;

import java.util.Map;
import slipway.pictures.space.Bounds;
import slipway.pictures.space.P2;

/**
 * Where things are in a picture: for comparing pictures and for placing others beside them. Fractions of stature, y up,
 * the origin under the point that stays in place.
 *
 * @param joints the joints by name; those of the other side with the prefix {@code other-}
 * @param bounds what the picture needs, with its margin
 * @param floor height of the floor in the picture, for the views in which it is a line
 */
public record FigureGeometry(Map<String, P2> joints, Bounds bounds, double floor) {
    public FigureGeometry {
        joints = Map.copyOf(joints);
    }

    public P2 joint(String name) {
        P2 joint = joints.get(name);
        if (joint == null) {
            throw new IllegalArgumentException("unknown joint of a figure: " + name);
        }
        return joint;
    }
}
