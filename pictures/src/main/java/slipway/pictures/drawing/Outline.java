package slipway.pictures.drawing;

import java.util.ArrayList;
import java.util.List;
import slipway.pictures.skeleton.Ellipsoid;
import slipway.pictures.skeleton.Solid;
import slipway.pictures.space.Camera;
import slipway.pictures.space.P2;

/**
 * The outline of a solid in the picture. The number of points depends on the solid alone, never on the posture, so that
 * the frames of a motion correspond point by point.
 */
final class Outline {
    private static final int CAP = 3;
    private static final int AROUND = 18;

    private Outline() {}

    static List<P2> of(Solid solid, Camera camera) {
        if (solid instanceof Solid.Tube tube) {
            return tube(tube.ellipsoids(), camera);
        }
        return hull(solid.ellipsoids(), camera, AROUND);
    }

    /** The outline of a tube without the end that belongs to its neighbour: an open line. */
    static List<P2> open(Solid.Tube tube, Camera camera, int skipped) {
        List<P2> all = tube(tube.ellipsoids(), camera);
        int n = tube.ellipsoids().size();
        return all.subList(skipped, 2 * n + CAP - skipped);
    }

    private static List<P2> tube(List<Ellipsoid> stations, Camera camera) {
        int n = stations.size();
        P2 first = camera.project(stations.get(0).centre());
        P2 last = camera.project(stations.get(n - 1).centre());
        double thickest = stations.stream().mapToDouble(Ellipsoid::width).max().orElse(0);
        if (first.distance(last) < thickest) {
            // Seen along its axis a tube is its ends one behind the other.
            return hull(stations, camera, 2 * n + 2 * CAP);
        }
        double[] angle = new double[n];
        for (int i = 0; i < n; i++) {
            P2 before = camera.project(stations.get(Math.max(0, i - 1)).centre());
            P2 after = camera.project(stations.get(Math.min(n - 1, i + 1)).centre());
            angle[i] = Math.atan2(after.y() - before.y(), after.x() - before.x());
        }
        var points = new ArrayList<P2>(2 * n + 2 * CAP);
        for (int i = 0; i < n; i++) {
            points.add(edge(stations.get(i), camera, angle[i] + Math.PI / 2));
        }
        cap(points, stations.get(n - 1), camera, angle[n - 1] + Math.PI / 2);
        for (int i = n - 1; i >= 0; i--) {
            points.add(edge(stations.get(i), camera, angle[i] - Math.PI / 2));
        }
        cap(points, stations.get(0), camera, angle[0] - Math.PI / 2);
        return points;
    }

    private static void cap(List<P2> points, Ellipsoid end, Camera camera, double from) {
        for (int k = 1; k <= CAP; k++) {
            points.add(edge(end, camera, from - Math.PI * k / (CAP + 1)));
        }
    }

    private static P2 edge(Ellipsoid e, Camera camera, double angle) {
        return camera.project(e.furthest(camera.inRoom(Math.cos(angle), Math.sin(angle))));
    }

    private static List<P2> hull(List<Ellipsoid> parts, Camera camera, int around) {
        var points = new ArrayList<P2>(around);
        for (int k = 0; k < around; k++) {
            double angle = Math.PI / 2 - 2 * Math.PI * k / around;
            var direction = camera.inRoom(Math.cos(angle), Math.sin(angle));
            Ellipsoid best = parts.get(0);
            double most = Double.NEGATIVE_INFINITY;
            for (Ellipsoid e : parts) {
                double reach = e.centre().dot(direction) + e.reach(direction);
                if (reach > most) {
                    most = reach;
                    best = e;
                }
            }
            points.add(camera.project(best.furthest(direction)));
        }
        return points;
    }
}
