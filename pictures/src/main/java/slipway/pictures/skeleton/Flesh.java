package slipway.pictures.skeleton;

import java.util.ArrayList;
import java.util.List;
import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/** The surfaces of the parts of the body. Sizes without a file are drawing choices beside their part. */
public final class Flesh {
    static final double BALL_RADIUS = 0.0125;
    private static final double CLOTH = 0.0035;
    private static final double HEM = 0.006;
    private static final List<Section> SHORTS_LEG = Section.between(Section.THIGH, 0, 0.56, CLOTH);
    private static final List<Section> SHORTS_TOP = Section.between(Section.TRUNK, -0.08, 0.30, 0);
    private static final List<Section> SHIRT = Section.between(Section.TRUNK, 0.24, 0.985, CLOTH / 2);
    private static final List<Section> SLEEVE = Section.between(Section.UPPER_ARM, 0, 0.52, CLOTH);
    private static final List<Section> BARE_THIGH = Section.between(Section.THIGH, 0.45, 1, 0);
    private static final List<Section> BARE_UPPER_ARM = Section.between(Section.UPPER_ARM, 0.40, 1, 0);
    private static final List<Section> BELLY = Section.between(Section.TRUNK, -0.08, 0.20, 0);
    private static final List<Section> CHEST = Section.between(Section.TRUNK, 0.58, 0.95, 0);

    private Flesh() {}

    public static Solid thigh(Leg leg) {
        return tube(leg.hip(), leg.knee(), leg.thigh(), Section.THIGH);
    }

    /** The thigh from under the shorts on. */
    public static Solid bareThigh(Leg leg) {
        return tube(leg.hip(), leg.knee(), leg.thigh(), BARE_THIGH);
    }

    public static Solid shank(Leg leg) {
        return tube(leg.knee(), leg.ankle(), leg.shank(), Section.SHANK);
    }

    public static Solid shortsLeg(Leg leg) {
        return hemmed(tube(leg.hip(), leg.knee(), leg.thigh(), SHORTS_LEG));
    }

    /** Heel with instep, middle of the foot, toes. */
    public static List<Solid> foot(Leg leg) {
        Frame f = leg.foot();
        double sole = BodyRatios.ANKLE_HEIGHT;
        double half = BodyRatios.FOOT_BREADTH / 2;
        var ankle = new Ellipsoid(leg.ankle(), f, 0.0205, 0.0195, 0.0205);
        double heelRadius = 0.0185;
        var heel = new Ellipsoid(
                f.at(leg.ankle(), heelRadius - BodyRatios.HEEL_BACK, 0, heelRadius - sole),
                f,
                heelRadius,
                0.019,
                heelRadius);
        var instep = new Ellipsoid(f.at(leg.ankle(), 0.036, 0, -0.012), f, 0.018, 0.021, 0.0175);
        double ballOut = half - BALL_RADIUS;
        Ellipsoid inner = Ellipsoid.ball(leg.ball().plus(f.out(), -ballOut), BALL_RADIUS);
        Ellipsoid outer = Ellipsoid.ball(f.at(leg.ball(), -0.008, ballOut, -0.002), BALL_RADIUS - 0.002);
        double toeRadius = 0.0085;
        double toeDown = toeRadius - BALL_RADIUS;
        Ellipsoid big =
                Ellipsoid.ball(leg.toes().at(leg.ball(), BodyRatios.TOES - toeRadius, -0.010, toeDown), toeRadius);
        Ellipsoid small = Ellipsoid.ball(leg.toes().at(leg.ball(), BodyRatios.TOES - 0.020, 0.014, toeDown), toeRadius);
        return List.of(
                new Solid.Hull(List.of(ankle, heel, instep)),
                new Solid.Hull(List.of(instep, inner, outer)),
                new Solid.Hull(List.of(inner, outer, big, small)));
    }

    /** The whole leg without its upper end, which belongs to the pelvis. */
    static List<Solid> lowerLeg(Leg leg) {
        var solids = new ArrayList<>(foot(leg));
        solids.add(shank(leg));
        solids.add(new Solid.Tube(thigh(leg).ellipsoids().subList(3, Section.THIGH.size())));
        return solids;
    }

    static List<Solid> leg(Leg leg) {
        var solids = new ArrayList<>(foot(leg));
        solids.add(shank(leg));
        solids.add(thigh(leg));
        return solids;
    }

    static List<Solid> knee(Leg leg) {
        return List.of(
                new Solid.Tube(shank(leg).ellipsoids().subList(0, 2)),
                new Solid.Tube(thigh(leg).ellipsoids().subList(4, Section.THIGH.size())));
    }

    public static Solid trunk(Trunk trunk) {
        return along(trunk, Section.TRUNK);
    }

    public static Solid shirt(Trunk trunk) {
        return hemmed(along(trunk, SHIRT));
    }

    public static Solid shortsTop(Trunk trunk) {
        return along(trunk, SHORTS_TOP);
    }

    static Solid belly(Trunk trunk) {
        return along(trunk, BELLY);
    }

    static Solid chest(Trunk trunk) {
        return along(trunk, CHEST);
    }

    public static Solid neck(Skeleton s) {
        V3 top = s.head().at(s.headCentre(), -0.012, 0, -0.028);
        return tube(top, s.trunk().at(0.96), s.trunk().thorax(), Section.NECK);
    }

    public static Solid head(Skeleton s) {
        Frame h = s.head();
        return new Solid.Hull(List.of(
                new Ellipsoid(h.at(s.headCentre(), -0.002, 0, 0.012), h, 0.056, 0.046, 0.051),
                new Ellipsoid(h.at(s.headCentre(), 0.020, 0, -0.032), h, 0.030, 0.030, 0.032)));
    }

    public static Solid upperArm(Arm arm) {
        return tube(arm.shoulder(), arm.elbow(), limbFrame(arm.shoulder(), arm.elbow()), Section.UPPER_ARM);
    }

    /** The upper arm from under the sleeve on. */
    public static Solid bareUpperArm(Arm arm) {
        return tube(arm.shoulder(), arm.elbow(), limbFrame(arm.shoulder(), arm.elbow()), BARE_UPPER_ARM);
    }

    public static Solid sleeve(Arm arm) {
        Solid.Tube sleeve = hemmed(tube(arm.shoulder(), arm.elbow(), limbFrame(arm.shoulder(), arm.elbow()), SLEEVE));
        // Flat at the root too, or a sleeve would stand higher than the shoulder.
        var ellipsoids = new ArrayList<>(sleeve.ellipsoids());
        Ellipsoid root = ellipsoids.get(0);
        ellipsoids.set(0, new Ellipsoid(root.centre(), root.axes(), root.depth(), root.width(), 0.6 * root.depth()));
        return new Solid.Tube(List.copyOf(ellipsoids));
    }

    public static Solid forearm(Arm arm) {
        return tube(arm.elbow(), arm.wrist(), limbFrame(arm.elbow(), arm.wrist()), Section.FOREARM);
    }

    /** Palm with fingers, thumb. */
    public static List<Solid> hand(Arm arm) {
        Frame h = arm.hand();
        V3 w = arm.wrist();
        var root = new Ellipsoid(h.at(w, 0, 0, -0.004), h, 0.0115, 0.0150, 0.013);
        if (arm.closed()) {
            return List.of(
                    new Solid.Hull(List.of(root, new Ellipsoid(h.at(w, 0, 0.001, -0.034), h, 0.0205, 0.0225, 0.0195))),
                    new Solid.Hull(List.of(
                            Ellipsoid.ball(h.at(w, 0.008, 0.018, -0.026), 0.0085),
                            Ellipsoid.ball(h.at(w, 0.014, 0.020, -0.046), 0.0075))));
        }
        return List.of(
                new Solid.Tube(List.of(
                        root,
                        new Ellipsoid(h.at(w, 0, 0, -0.028), h, 0.0105, 0.0205, 0.016),
                        new Ellipsoid(h.at(w, 0, -0.001, -0.052), h, 0.0090, 0.0205, 0.013),
                        new Ellipsoid(h.at(w, 0.002, -0.001, -0.078), h, 0.0075, 0.0165, 0.010),
                        new Ellipsoid(h.at(w, 0.004, -0.001, -0.096), h, 0.0060, 0.0110, 0.009))),
                new Solid.Hull(List.of(
                        Ellipsoid.ball(h.at(w, 0.001, 0.012, -0.020), 0.0090),
                        Ellipsoid.ball(h.at(w, 0.004, 0.028, -0.052), 0.0068))));
    }

    private static Frame limbFrame(V3 from, V3 to) {
        V3 up = from.minus(to).unitOr(V3.Z);
        V3 front = V3.X.across(up).length() > 0.3
                ? V3.X.across(up).unitOr(V3.X)
                : V3.Y.across(up).unitOr(V3.Y);
        return new Frame(front, front.cross(up), up);
    }

    private static Solid tube(V3 from, V3 to, Frame frame, List<Section> sections) {
        var ellipsoids = new ArrayList<Ellipsoid>(sections.size());
        for (Section s : sections) {
            ellipsoids.add(new Ellipsoid(
                    from.towards(to, s.at()).plus(frame.front(), s.shift()),
                    frame,
                    s.depth(),
                    s.width(),
                    Math.min(s.depth(), s.width())));
        }
        return new Solid.Tube(List.copyOf(ellipsoids));
    }

    /** Cloth ends in a nearly straight hem: at the waist for a shirt, at the far end for legs and sleeves. */
    private static Solid.Tube hemmed(Solid cloth) {
        var ellipsoids = new ArrayList<>(cloth.ellipsoids());
        boolean atWaist = ellipsoids.get(0).width() > 0.06;
        int hem = atWaist ? 0 : ellipsoids.size() - 1;
        Ellipsoid e = ellipsoids.get(hem);
        ellipsoids.set(hem, new Ellipsoid(e.centre(), e.axes(), e.depth(), e.width(), HEM));
        return new Solid.Tube(List.copyOf(ellipsoids));
    }

    private static Solid along(Trunk trunk, List<Section> sections) {
        var ellipsoids = new ArrayList<Ellipsoid>(sections.size());
        for (Section s : sections) {
            Frame frame = trunk.frameAt(s.at());
            ellipsoids.add(new Ellipsoid(
                    trunk.at(s.at()).plus(frame.front(), s.shift()), frame, s.depth(), s.width(), 0.5 * s.depth()));
        }
        return new Solid.Tube(List.copyOf(ellipsoids));
    }
}
