package slipway.care.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.mechanics.body.Support;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.pictures.figure.Figure;
import slipway.pictures.figure.FigureScene;
import slipway.pictures.figure.NerveMark;
import slipway.pictures.figure.Pose;
import slipway.pictures.figure.PropUse;
import slipway.pictures.figure.View;
import slipway.pictures.look.Look;
import slipway.pictures.space.Bounds;
import slipway.pictures.space.P2;
import slipway.pictures.svg.PathData;
import slipway.pictures.svg.Words;

/**
 * The figure of a stance, in a frame that does not change with the angles, and the places where its limbs can be taken
 * hold of.
 */
public final class BenchFigure {
    /** Half of the step over which a handle's way is measured, deg. */
    private static final double PROBE_DEG = 2;

    /** A handle that moves less than this per degree hardly follows the joint; as a fraction of stature. */
    private static final double LEAST_WAY = 0.0006;

    /** Postures between which nearly everything that can be done on a support takes place. */
    private static final List<String> EXTREMES = List.of(
            "",
            "hip 95 knee 0",
            "hip 110 knee 110 other-hip 110 other-knee 110",
            "hip -15 knee 90",
            "spine 60 neck 45",
            "neck -40",
            "hip 70 knee 0 other-hip 70 other-knee 0");

    private static final Map<Stage, Bounds> STAGES = new ConcurrentHashMap<>();

    private final Stance stance;
    private final FigureScene scene;
    private final Figure figure;
    private final Bounds frame;

    private record Stage(Support support, View view, Side side) {}

    private BenchFigure(Stance stance, FigureScene scene) {
        this.stance = stance;
        this.scene = scene;
        this.figure = Figure.of(scene);
        Bounds stage = STAGES.computeIfAbsent(
                new Stage(stance.support(), scene.view(), scene.ownSide()), key -> stage(stance, scene));
        this.frame = stage.union(figure.geometry().bounds());
    }

    /**
     * The figure of a stance with the nerve along its leg.
     *
     * @param view empty for the usual one
     * @param marked a place on the nerve to mark
     */
    public static BenchFigure of(Stance stance, Side side, Optional<View> view, Tract tract, Optional<Site> marked) {
        FigureScene scene = FigureScene.of(stance.support(), stance.posture(), stance.arms())
                .withSide(side)
                .withView(view.orElse(View.usual(stance.support())))
                .withNerve(new NerveMark(tract, marked.filter(site -> PostureReading.onTract(site, tract))));
        return new BenchFigure(stance, stance.support() == Support.SITTING ? scene.withProps(PropUse.CHAIR) : scene);
    }

    private static Bounds stage(Stance stance, FigureScene scene) {
        Posture base = stance.position().posture();
        Bounds all = Figure.of(posed(scene, base)).geometry().bounds();
        for (String change : EXTREMES) {
            all = all.union(
                    Figure.of(posed(scene, base.withParsed(change))).geometry().bounds());
        }
        return all;
    }

    private static FigureScene posed(FigureScene scene, Posture posture) {
        return new FigureScene(
                scene.ownSide(),
                new Pose(scene.pose().support(), posture, scene.pose().arms()),
                scene.props(),
                scene.view(),
                Optional.empty(),
                scene.nerve());
    }

    /** The rectangle that the picture shows. */
    public Bounds frame() {
        return frame;
    }

    /** The picture. */
    public String svg(Look look, Words words, Bounds shown) {
        return figure.svg(look, words, shown);
    }

    /**
     * A place to take hold of.
     *
     * @param joint the joint that it moves, as the fields name it, for example {@code other-knee}
     * @param x place in units of the picture, to the right
     * @param y place in units of the picture, downwards
     * @param xPerDeg where it goes when the joint turns by a degree
     * @param yPerDeg the same downwards
     */
    public record Handle(String joint, double x, double y, double xPerDeg, double yPerDeg) {}

    /** The handles of all joints that can be moved in this view, or of one of them. */
    public List<Handle> handles(Optional<String> only) {
        var handles = new ArrayList<Handle>();
        for (Grip grip : Grip.of(scene.view())) {
            for (Limb limb : grip.joint().paired() ? Limb.values() : new Limb[] {Limb.OWN}) {
                String name =
                        (limb == Limb.OTHER ? "other-" : "") + grip.joint().key();
                if (only.isEmpty() || only.get().equals(name)) {
                    handle(grip, limb, name).ifPresent(handles::add);
                }
            }
        }
        return handles;
    }

    private Optional<Handle> handle(Grip grip, Limb limb, String name) {
        String point = (limb == Limb.OTHER && grip.joint().paired() ? "other-" : "") + grip.point();
        Posture posture = stance.posture();
        double angle = posture.angleDeg(grip.joint(), limb);
        double low = Math.max(grip.joint().lowDeg(), angle - PROBE_DEG);
        double high = Math.min(grip.joint().highDeg(), angle + PROBE_DEG);
        P2 from = seen(posture.with(grip.joint(), limb, low), point);
        P2 to = seen(posture.with(grip.joint(), limb, high), point);
        double x = (to.x() - from.x()) / (high - low);
        double y = (to.y() - from.y()) / (high - low);
        if (Math.hypot(x, y) < LEAST_WAY) {
            return Optional.empty();
        }
        P2 here = figure.geometry().joint(point);
        return Optional.of(new Handle(name, units(here.x()), units(-here.y()), units(x), units(-y)));
    }

    private P2 seen(Posture posture, String point) {
        return Figure.of(posed(scene, posture)).geometry().joint(point);
    }

    private static double units(double statures) {
        return statures * PathData.units(1);
    }

    /** Which point of the body moves which joint. */
    private record Grip(Joint joint, String point) {
        private static final List<Grip> SAGITTAL = List.of(
                new Grip(Joint.HIP, "knee"),
                new Grip(Joint.KNEE, "ankle"),
                new Grip(Joint.ANKLE, "toe"),
                new Grip(Joint.SPINE, "neck"),
                new Grip(Joint.NECK, "head"));

        private static final List<Grip> FRONTAL = List.of(
                new Grip(Joint.HIP_ABDUCTION, "knee"),
                new Grip(Joint.HIP_ROTATION, "ankle"),
                new Grip(Joint.SPINE_SIDE, "neck"));

        static List<Grip> of(View view) {
            return view == View.FRONT || view == View.TOP ? FRONTAL : SAGITTAL;
        }
    }
}
