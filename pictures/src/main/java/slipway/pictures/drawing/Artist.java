package slipway.pictures.drawing;

import java.util.ArrayList;
import java.util.List;
import slipway.mechanics.body.Limb;
import slipway.pictures.look.Colour;
import slipway.pictures.look.Look;
import slipway.pictures.look.Palette;
import slipway.pictures.skeleton.Body;
import slipway.pictures.skeleton.Ellipsoid;
import slipway.pictures.skeleton.Flesh;
import slipway.pictures.skeleton.Leg;
import slipway.pictures.skeleton.Solid;
import slipway.pictures.skeleton.Strap;
import slipway.pictures.space.Bounds;
import slipway.pictures.space.Camera;
import slipway.pictures.space.P2;
import slipway.pictures.space.V3;
import slipway.pictures.svg.PathData;
import slipway.pictures.svg.Svg;

/** Draws the layers of a figure, one call each, from the back to the front. */
public final class Artist {
    private final Pen pen;

    public Artist(Svg svg, Camera camera, Look look) {
        this.pen = new Pen(svg, camera, look);
    }

    /** The rectangle that a body needs in the picture. */
    public static Bounds bounds(Body body, Camera camera) {
        var points = new ArrayList<P2>();
        for (Solid solid : body.solids()) {
            for (Ellipsoid e : solid.ellipsoids()) {
                P2 c = camera.project(e.centre());
                double x = e.reach(camera.right());
                double y = e.reach(camera.up());
                points.add(new P2(c.x() - x, c.y() - y));
                points.add(new P2(c.x() + x, c.y() + y));
            }
        }
        return Bounds.around(points);
    }

    private Palette palette() {
        return pen.look().palette();
    }

    public void floor(double left, double right, double height) {
        pen.svg()
                .path(
                        PathData.polyline(List.of(new P2(left, height), new P2(right, height))),
                        "stroke",
                        palette().soft().hex(),
                        "stroke-width",
                        "5",
                        "stroke-linecap",
                        "round");
    }

    public void box(Box box) {
        double round = box.rounding();
        String d = PathData.polygon(box.outline(pen.camera(), round));
        Colour fill = box.colour(palette());
        long wide = PathData.units(2 * round);
        Colour line = palette().ink().mixed(fill, 0.45);
        pen.svg()
                .open("stroke-linejoin", "round", "fill", fill.hex())
                .path(d, "stroke", line.hex(), "stroke-width", Long.toString(wide + 6))
                .path(d, "stroke", fill.hex(), "stroke-width", Long.toString(wide))
                .close();
    }

    /** The parts of a body that were elsewhere before the movement, dashed; nothing if nothing moved. */
    public void ghost(Body before, Body now) {
        var parts = new ArrayList<Solid>();
        for (Limb limb : Limb.values()) {
            Leg leg = before.bones().leg(limb);
            Leg end = now.bones().leg(limb);
            if (moved(leg.knee(), end.knee()) || moved(leg.hip(), end.hip())) {
                parts.add(Flesh.thigh(leg));
            }
            if (moved(leg.ankle(), end.ankle()) || moved(leg.knee(), end.knee())) {
                parts.add(Flesh.shank(leg));
            }
            if (moved(leg.toe(), end.toe()) || moved(leg.ankle(), end.ankle())) {
                parts.addAll(Flesh.foot(leg));
            }
        }
        if (far(before.bones().headCentre(), now.bones().headCentre(), 0.06)
                || far(before.bones().trunk().hips(), now.bones().trunk().hips(), 0.06)) {
            parts.add(Flesh.trunk(before.bones().trunk()));
            parts.add(Flesh.neck(before.bones()));
            parts.add(Flesh.head(before.bones()));
        }
        List<String> paths = pen.closed(parts);
        pen.svg().open("stroke-dasharray", "15 12");
        pen.strokes(paths, palette().soft(), "8");
        pen.svg().close();
        // On a mat seen from above the ghost lies on the mat.
        boolean onMat = pen.camera().towards().z() > 0.1;
        pen.fills(
                paths,
                onMat
                        ? palette().mat().mixed(palette().paper(), 0.5)
                        : palette().paper());
    }

    private boolean moved(V3 before, V3 now) {
        return far(before, now, 0.022);
    }

    private boolean far(V3 before, V3 now, double least) {
        return pen.camera().project(before).distance(pen.camera().project(now)) > least;
    }

    /** The body, with something between its trunk and near limbs and something under its near arms. */
    public void body(Body body, Runnable behindNearLimbs, Runnable beforeArms) {
        new BodyDrawing(pen, body).draw(behindNearLimbs, beforeArms);
    }

    /** A strap around the forefoot of the own leg, held by both hands. */
    public void strap(Body body) {
        Leg leg = body.bones().own();
        V3 sole = Strap.forefoot(leg);
        V3 grip = body.ownArm().grip();
        strapLine(List.of(body.otherArm().grip(), sole), 0.25);
        strapLine(List.of(Strap.around(leg, false, true), Strap.around(leg, true, true), sole), 0);
        strapLine(List.of(sole, grip), 0);
        double hang = Math.min(0.085, Math.max(0.01, grip.z() - 0.02));
        strapLine(List.of(grip, grip.plus(V3.X, -0.012).plus(V3.Z, -0.4 * hang), grip.plus(V3.Z, -hang)), 0);
    }

    private void strapLine(List<V3> points, double paler) {
        List<P2> line = points.stream().map(pen.camera()::project).toList();
        pen.svg()
                .path(
                        PathData.openCurve(line),
                        "fill",
                        "none",
                        "stroke",
                        palette().accent().mixed(palette().paper(), paler).hex(),
                        "stroke-width",
                        "12",
                        "stroke-linecap",
                        "round",
                        "stroke-linejoin",
                        "round");
    }

    /** A nerve along its path. */
    public void nerve(List<V3> path) {
        String d = PathData.openCurve(path.stream().map(pen.camera()::project).toList());
        pen.svg()
                .open("fill", "none", "stroke-linecap", "round", "stroke-linejoin", "round")
                .path(d, "stroke", palette().paper().hex(), "stroke-width", "17")
                .path(d, "stroke", palette().accent().hex(), "stroke-width", "9")
                .close();
    }

    /** The mark of a place on the nerve. */
    public void site(V3 place) {
        P2 p = pen.camera().project(place);
        String x = Long.toString(PathData.units(p.x()));
        String y = Long.toString(PathData.units(-p.y()));
        pen.svg()
                .element(
                        "circle",
                        "cx",
                        x,
                        "cy",
                        y,
                        "r",
                        "20",
                        "fill",
                        palette().paper().hex(),
                        "stroke",
                        palette().accent().hex(),
                        "stroke-width",
                        "7")
                .element(
                        "circle",
                        "cx",
                        x,
                        "cy",
                        y,
                        "r",
                        "8",
                        "fill",
                        palette().accent().hex());
    }

    /** The line of the arrow of a movement; empty if hardly anything moves. */
    public static List<P2> arrowLine(List<P2> way, P2 middle, double aside) {
        double length = 0;
        for (int i = 1; i < way.size(); i++) {
            length += way.get(i).distance(way.get(i - 1));
        }
        return length < 0.02 ? List.of() : Arrow.line(way, middle, aside);
    }

    public void arrow(List<P2> line) {
        if (line.size() > 1) {
            Arrow.draw(pen, line);
        }
    }
}
