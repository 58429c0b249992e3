package slipway.pictures.figure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.mechanics.motion.Motion;
import slipway.pictures.drawing.Artist;
import slipway.pictures.drawing.Box;
import slipway.pictures.look.Look;
import slipway.pictures.skeleton.Body;
import slipway.pictures.skeleton.NervePath;
import slipway.pictures.space.Bounds;
import slipway.pictures.space.Camera;
import slipway.pictures.space.P2;
import slipway.pictures.space.V3;
import slipway.pictures.svg.Svg;
import slipway.pictures.svg.Words;

/** A scene with its bodies at rest, ready to be drawn or measured. Immutable. */
public final class Figure {
    private static final double MARGIN = 0.03;
    private static final int WAY_POINTS = 5;

    private final FigureScene scene;
    private final Body body;
    private final Optional<Body> ghost;
    private final Camera camera;
    private final List<P2> arrow;
    private final List<Box> behind;
    private final Things things;
    private final Bounds bounds;

    private Figure(FigureScene scene, Placing placing) {
        this.scene = scene;
        this.body = placing.body(scene.pose());
        this.ghost = scene.start().map(placing::body);
        Camera right = scene.view().camera();
        this.camera = scene.ownSide() == Side.RIGHT ? right : right.mirrored();
        // Found as seen from the right, so that the left is its mirror picture to the last digit.
        List<P2> found = scene.start().map(start -> arrow(start, placing)).orElse(List.of());
        this.arrow = scene.ownSide() == Side.RIGHT
                ? found
                : found.stream().map(p -> new P2(-p.x(), p.y())).toList();
        var bodies = new ArrayList<>(List.of(body));
        ghost.ifPresent(bodies::add);
        this.things = new Things(body, scene, bodies);
        this.behind = things.behind();
        this.bounds = bounds(bodies);
    }

    /** Solves a scene. Pure. */
    public static Figure of(FigureScene scene) {
        return new Figure(scene, Placing.of(scene));
    }

    /**
     * The figures along a motion, at even steps of time, with the point that stays in place in the same place of each
     * picture: draw them with {@link #commonBounds}.
     *
     * @param scene gives everything but the posture
     * @param count how many, at least 2
     */
    public static List<Figure> along(FigureScene scene, Motion motion, int count) {
        List<Posture> postures = motion.sampled(count);
        Pose first = posed(scene, postures.get(0));
        // What moves decides which foot may settle, the same in every frame.
        Posture other = motion.keys().stream()
                .map(Motion.Key::posture)
                .filter(posture -> !posture.equals(first.posture()))
                .findFirst()
                .orElse(first.posture());
        Placing placing = Placing.of(scene.at(posed(scene, other)).from(first));
        return postures.stream()
                .map(posture -> new Figure(scene.at(posed(scene, posture)), placing))
                .toList();
    }

    private static Pose posed(FigureScene scene, Posture posture) {
        return new Pose(scene.pose().support(), posture, scene.pose().arms());
    }

    /** The way of the joint that moves most, as the line of an arrow. */
    private List<P2> arrow(Pose start, Placing placing) {
        Body first = ghost.orElse(body);
        String most = "toe";
        double furthest = -1;
        for (String joint : first.joints().keySet()) {
            double distance = seen(first, joint).distance(seen(body, joint));
            if (distance > furthest + 0.004) {
                furthest = distance;
                most = joint;
            }
        }
        if (!placing.sameSupport()) {
            // From seat to feet and the like: between two supports no posture rests, so only the ends are shown.
            P2 from = seen(first, "head");
            P2 to = seen(body, "head");
            P2 behind =
                    scene.view().camera().project(body.bones().trunk().hips().plus(V3.X, -1));
            return onGround(Artist.arrowLine(List.of(from, from.towards(to, 0.5), to), behind, 0.13));
        }
        var way = new ArrayList<P2>();
        for (int i = 0; i < WAY_POINTS; i++) {
            double fraction = (double) i / (WAY_POINTS - 1);
            way.add(seen(between(start, fraction, placing), most));
        }
        return onGround(Artist.arrowLine(
                way, scene.view().camera().project(body.bones().trunk().at(0.3)), 0.05));
    }

    /** An arrow does not go under the floor. */
    private List<P2> onGround(List<P2> line) {
        if (scene.view() == View.TOP || scene.view() == View.RAISED) {
            return line;
        }
        return line.stream().map(p -> new P2(p.x(), Math.max(p.y(), 0.022))).toList();
    }

    private Body between(Pose start, double fraction, Placing placing) {
        if (fraction == 0) {
            return ghost.orElse(body);
        }
        Posture posture = start.posture().towards(scene.pose().posture(), fraction);
        return fraction == 1 ? body : placing.body(posed(scene, posture));
    }

    private P2 seen(Body in, String joint) {
        return scene.view().camera().project(in.joint(joint));
    }

    private Bounds bounds(Collection<Body> bodies) {
        Bounds all = Artist.bounds(body, camera);
        for (Body each : bodies) {
            all = all.union(Artist.bounds(each, camera));
        }
        for (Box box : behind) {
            all = all.union(box.seenBy(camera));
        }
        if (!arrow.isEmpty()) {
            all = all.union(Bounds.around(arrow).grown(0.02));
        }
        return all.grown(MARGIN);
    }

    /** The smallest rectangle in which all these figures can be drawn. */
    public static Bounds commonBounds(Collection<Figure> figures) {
        return figures.stream()
                .map(figure -> figure.bounds)
                .reduce(Bounds::union)
                .orElseThrow(() -> new IllegalArgumentException("no figures to draw"));
    }

    public FigureScene scene() {
        return scene;
    }

    /** Joints in the picture and what the picture needs. */
    public FigureGeometry geometry() {
        Map<String, P2> joints = new LinkedHashMap<>();
        body.joints().forEach((name, place) -> joints.put(name, camera.project(place)));
        return new FigureGeometry(joints, bounds, things.floor());
    }

    /** The bodies in the room: for tests of contact and lengths. */
    public Body body() {
        return body;
    }

    public String svg(Look look, Words words) {
        return svg(look, words, bounds);
    }

    /**
     * The picture.
     *
     * @param frame the rectangle to show, for pictures that stand side by side
     */
    public String svg(Look look, Words words, Bounds frame) {
        var svg = new Svg();
        draw(new Artist(svg, camera, look), frame);
        return svg.document(words, frame);
    }

    private void draw(Artist artist, Bounds frame) {
        if (scene.view() == View.SIDE || scene.view() == View.FRONT) {
            artist.floor(frame.left() + 0.01, frame.right() - 0.01, things.floor());
        }
        behind.forEach(artist::box);
        ghost.ifPresent(before -> artist.ghost(before, body));
        artist.body(body, () -> things.betweenLegs().forEach(artist::box), () -> {
            if (scene.props().contains(PropUse.STRAP)) {
                artist.strap(body);
            }
        });
        scene.nerve().ifPresent(nerve -> {
            artist.nerve(NervePath.of(body, nerve.tract()));
            nerve.site().ifPresent(site -> artist.site(NervePath.site(body, nerve.tract(), site)));
        });
        artist.arrow(arrow);
    }
}
