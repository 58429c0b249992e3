package slipway.pictures.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Support;
import slipway.pictures.drawing.Box;
import slipway.pictures.drawing.Box.Material;
import slipway.pictures.skeleton.Body;
import slipway.pictures.skeleton.Ellipsoid;
import slipway.pictures.skeleton.Flesh;
import slipway.pictures.skeleton.Leg;
import slipway.pictures.skeleton.Solid;
import slipway.pictures.space.V3;

/** The things around a body, placed where they touch it. Sizes are those of usual furniture, chosen for drawing. */
final class Things {
    static final double MAT_THICKNESS = 0.016;
    static final double TABLE_HEIGHT = 0.40;
    private static final double MAT_HALF = 0.19;

    private final Body body;
    private final FigureScene scene;
    private final List<Body> bodies;
    private final double depth;

    /**
     * @param bodies all bodies of the picture, so that mat and table carry the ghost too
     */
    Things(Body body, FigureScene scene, List<Body> bodies) {
        this.body = body;
        this.scene = scene;
        this.bodies = bodies;
        this.depth = body.bones().trunk().hips().y();
    }

    private boolean has(PropUse use) {
        return scene.props().contains(use);
    }

    private Support support() {
        return scene.pose().support();
    }

    /** Whether someone lies or kneels on a mat or a table. */
    boolean onMat() {
        return support() != Support.SITTING && support() != Support.STANDING;
    }

    double floor() {
        return onMat() ? (has(PropUse.TABLE) ? -TABLE_HEIGHT : -MAT_THICKNESS) : 0;
    }

    /** Everything that is drawn before the body. */
    List<Box> behind() {
        var boxes = new ArrayList<Box>();
        if (onMat()) {
            matOrTable(boxes);
        } else if (has(PropUse.TABLE)) {
            boxes.addAll(tableInFront());
        }
        boolean seated = support() == Support.SITTING
                || scene.start().map(pose -> pose.support() == Support.SITTING).orElse(false);
        if (seated || has(PropUse.CHAIR)) {
            chair(boxes);
        }
        if (has(PropUse.WALL) || has(PropUse.WALL_IN_FRONT)) {
            boxes.add(wall());
        }
        pillows(boxes);
        if (has(PropUse.STEP)) {
            boxes.add(underFoot(Material.WOOD, 0.03));
        }
        return boxes;
    }

    /** What lies between the legs. */
    List<Box> betweenLegs() {
        if (!has(PropUse.PILLOW_BETWEEN_KNEES)) {
            return List.of();
        }
        V3 a = body.bones().own().knee();
        V3 b = body.bones().other().knee();
        V3 m = a.towards(b, 0.5);
        double half = Math.max(0.012, 0.5 * Math.abs(a.z() - b.z()) - 0.030);
        return List.of(Box.of(m.x() - 0.075, m.x() + 0.075, m.y(), 0.05, m.z() - half, m.z() + half, Material.CLOTH));
    }

    private void matOrTable(List<Box> boxes) {
        double left = -extreme(e -> -e.centre().x() + e.reach(V3.X)) - 0.05;
        double right = extreme(e -> e.centre().x() + e.reach(V3.X)) + 0.05;
        double near = Math.min(depth - MAT_HALF, -extreme(e -> -e.centre().y() + e.reach(V3.Y)) - 0.04);
        double far = Math.max(depth + MAT_HALF, extreme(e -> e.centre().y() + e.reach(V3.Y)) + 0.04);
        if (!has(PropUse.TABLE)) {
            boxes.add(Box.of(left, right, 0.5 * (near + far), 0.5 * (far - near), -MAT_THICKNESS, 0, Material.MAT));
            return;
        }
        if (support() == Support.PRONE) {
            // The feet reach over the end.
            left = Math.min(
                            body.bones().own().ankle().x(),
                            body.bones().other().ankle().x())
                    + 0.03;
        }
        for (double x : new double[] {left + 0.04, right - 0.065}) {
            boxes.add(Box.of(x, x + 0.025, depth, 0.15, -TABLE_HEIGHT, -0.03, Material.WOOD));
        }
        boxes.add(Box.of(left, right, depth, MAT_HALF, -0.035, 0, Material.MAT));
    }

    private double extreme(ToDoubleFunction<Ellipsoid> value) {
        return bodies.stream()
                .flatMap(b -> b.solids().stream())
                .flatMap(s -> s.ellipsoids().stream())
                .mapToDouble(value)
                .max()
                .orElse(0);
    }

    private Body seatedBody() {
        return bodies.stream()
                .filter(b -> b.resting().support() == Support.SITTING)
                .findFirst()
                .orElse(body);
    }

    private void chair(List<Box> boxes) {
        Body seated = seatedBody();
        boolean sits = seated.resting().support() == Support.SITTING;
        double seat = sits ? seated.resting().seatHeight() : 0.26;
        double back = sits
                ? seated.bones().trunk().hips().x() - 0.125
                : body.ownArm().grip().x() - 0.005;
        // Someone standing holds the back of a chair that is turned away; over a step it stands beside instead.
        double turned = !sits && has(PropUse.STEP) ? -1 : 1;
        double top = sits ? seat + 0.24 : body.ownArm().grip().z() - 0.008;
        double half = 0.13;
        for (double y : new double[] {depth + half - 0.012, depth - half + 0.012}) {
            boxes.add(piece(back + 0.249 * turned, back + 0.269 * turned, y, 0.010, 0, seat - 0.02));
            boxes.add(piece(back, back + 0.020 * turned, y, 0.010, 0, top));
        }
        boxes.add(piece(back, back + 0.020 * turned, depth, half, top - 0.09, top));
        boxes.add(piece(back, back + 0.275 * turned, depth, half, seat - 0.026, seat));
    }

    private static Box piece(double x0, double x1, double y, double halfDepth, double z0, double z1) {
        return Box.of(Math.min(x0, x1), Math.max(x0, x1), y, halfDepth, z0, z1, Material.WOOD);
    }

    private List<Box> tableInFront() {
        double near =
                Math.max(body.ownArm().wrist().x(), body.otherArm().wrist().x()) - 0.04;
        double top = Math.min(body.ownArm().wrist().z(), body.otherArm().wrist().z()) - 0.016;
        double height = Math.max(0.30, top);
        return List.of(
                Box.of(near + 0.02, near + 0.045, depth, 0.15, 0, height - 0.02, Material.WOOD),
                Box.of(near + 0.28, near + 0.305, depth, 0.15, 0, height - 0.02, Material.WOOD),
                Box.of(near, near + 0.32, depth, 0.18, height - 0.028, height, Material.WOOD));
    }

    private Box wall() {
        double x;
        boolean behind = false;
        if (scene.pose().arms() == Arms.ON_WALL) {
            x = Math.max(body.ownArm().wrist().x(), body.otherArm().wrist().x()) + 0.016;
        } else if (support() == Support.LYING || has(PropUse.WALL_IN_FRONT)) {
            x = extreme(e -> e.centre().x() + e.reach(V3.X)) + 0.002;
        } else {
            behind = true;
            x = -extreme(e -> -e.centre().x() + e.reach(V3.X)) - 0.002;
        }
        double top = Math.max(0.75, extreme(e -> e.centre().z() + e.reach(V3.Z)) + 0.05);
        return behind
                ? Box.of(x - 0.025, x, depth, 0.3, floor(), top, Material.WALL)
                : Box.of(x, x + 0.025, depth, 0.3, floor(), top, Material.WALL);
    }

    private void pillows(List<Box> boxes) {
        Leg own = body.bones().own();
        Leg other = body.bones().other();
        if (has(PropUse.PILLOW_UNDER_HEAD)) {
            V3 head = body.bones().headCentre();
            double top = Math.max(0.024, Solid.lowest(List.of(Flesh.head(body.bones())), V3.Z) + 0.014);
            boxes.add(Box.of(head.x() - 0.105, head.x() + 0.095, head.y(), 0.12, 0, top, Material.CLOTH));
        }
        if (has(PropUse.PILLOW_UNDER_KNEES)) {
            double x = 0.5 * (own.knee().x() + other.knee().x());
            double top = Math.min(own.knee().z(), other.knee().z()) - 0.026;
            boxes.add(Box.of(x - 0.09, x + 0.09, depth, 0.14, 0, Math.max(0.024, top), Material.CLOTH));
        }
        if (has(PropUse.PILLOW_UNDER_ANKLES)) {
            V3 shin = own.ankle().plus(own.shank().up(), 0.035);
            double top = Math.min(own.ankle().z(), other.ankle().z()) - 0.014;
            boxes.add(Box.of(shin.x() - 0.06, shin.x() + 0.06, depth, 0.14, 0, Math.max(0.022, top), Material.CLOTH));
        }
        if (has(PropUse.PILLOW_UNDER_BELLY)) {
            V3 belly = body.bones().trunk().at(0.2);
            boxes.add(Box.of(belly.x() - 0.11, belly.x() + 0.11, depth, 0.14, 0, 0.05, Material.CLOTH));
        }
        if (has(PropUse.TOWEL_UNDER_HEEL)) {
            boxes.add(underFoot(Material.CLOTH, -0.03));
        }
    }

    private Box underFoot(Material material, double wider) {
        Leg leg = body.bones().own();
        double low = Solid.lowest(Flesh.foot(leg), V3.Z);
        double x0 = Math.min(leg.ankle().x() - 0.04, leg.toe().x()) - wider;
        double x1 = Math.max(leg.toe().x(), leg.ankle().x() + 0.04) + wider;
        return Box.of(Math.min(x0, x1 - 0.03), x1, leg.ankle().y(), 0.07, 0, Math.max(0.018, low), material);
    }
}
