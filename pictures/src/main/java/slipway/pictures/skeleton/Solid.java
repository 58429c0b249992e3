package slipway.pictures.skeleton;

import java.util.Collection;
import java.util.List;
import slipway.pictures.space.V3;

/** A part of the body as something with a surface. */
public sealed interface Solid {
    List<Ellipsoid> ellipsoids();

    /** Ellipsoids strung on a line: a limb. */
    record Tube(List<Ellipsoid> ellipsoids) implements Solid {}

    /** The skin stretched around some ellipsoids: a part of a foot. */
    record Hull(List<Ellipsoid> ellipsoids) implements Solid {}

    /** How low some parts reach in a direction that counts as up. */
    static double lowest(Collection<? extends Solid> solids, V3 up) {
        double lowest = Double.POSITIVE_INFINITY;
        for (Solid solid : solids) {
            for (Ellipsoid e : solid.ellipsoids()) {
                lowest = Math.min(lowest, e.lowest(up));
            }
        }
        return lowest;
    }
}
