package slipway.pictures.skeleton;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Support;
import slipway.pictures.space.V3;

/** Nobody floats, nobody sinks, and bones keep their length. */
class RestPropertyTest {
    /** Half a unit of the picture: below what can be drawn. */
    private static final double DRAWN = 0.0006;

    private static final int POSTURES = 150;

    static Stream<Position> positions() {
        return Position.all().values().stream();
    }

    private static Support supportOf(Position position) {
        String name = position.name().toLowerCase(Locale.ROOT);
        if (name.equals("slump")) {
            return Support.SITTING;
        }
        return Stream.of(Support.values())
                .filter(support -> name.equals(support.key()))
                .findFirst()
                .or(() -> Stream.of(Support.values())
                        .filter(support -> name.startsWith(support.key()))
                        .findFirst())
                .orElseThrow(() -> new AssertionError("no support for the position " + name));
    }

    @ParameterizedTest
    @MethodSource("positions")
    void everyNamedPositionTouchesTheFloor(Position position) {
        Body body = Body.of(supportOf(position), position.posture(), Arms.ALONG_SIDES, Ground.FLOOR);
        assertThat(body.lowest()).isCloseTo(0, within(DRAWN));
    }

    @ParameterizedTest
    @EnumSource(Support.class)
    void noLegalPostureFloatsOrSinks(Support support) {
        var postures = new RandomPostures(5);
        for (int i = 0; i < POSTURES; i++) {
            Posture posture = postures.next();
            Body body = Body.of(support, posture, Arms.ALONG_SIDES, Ground.FLOOR);
            assertThat(body.lowest()).as("%s: %s", support, posture).isGreaterThan(-DRAWN);
            if (support != Support.SITTING) {
                assertThat(body.lowest()).as("%s: %s", support, posture).isLessThan(DRAWN);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Support.class)
    void bonesKeepTheirLength(Support support) {
        var postures = new RandomPostures(6);
        for (int i = 0; i < POSTURES; i++) {
            Arms arms = Arms.values()[i % Arms.values().length];
            Body body = Body.of(support, postures.next(), arms, Ground.FLOOR);
            for (Limb limb : Limb.values()) {
                Leg leg = body.bones().leg(limb);
                assertThat(leg.hip().distance(leg.knee())).isCloseTo(BodyRatios.THIGH, within(1e-9));
                assertThat(leg.knee().distance(leg.ankle())).isCloseTo(BodyRatios.SHANK, within(1e-9));
                Arm arm = body.arm(limb);
                assertThat(arm.shoulder().distance(arm.elbow()))
                        .as(arms.key())
                        .isCloseTo(BodyRatios.UPPER_ARM, within(1e-6));
                assertThat(arm.elbow().distance(arm.wrist()))
                        .as(arms.key())
                        .isCloseTo(BodyRatios.FOREARM, within(1e-6));
            }
        }
    }

    @Test
    void backHeelsAndHeadLieOnTheMat() {
        Skeleton s = Rest.of(Support.LYING, Position.get("lying").posture(), Ground.FLOOR)
                .skeleton();
        assertThat(Solid.lowest(List.of(Flesh.belly(s.trunk())), V3.Z)).isCloseTo(0, within(DRAWN));
        assertThat(Solid.lowest(List.of(Flesh.chest(s.trunk())), V3.Z)).isCloseTo(0, within(DRAWN));
        assertThat(Solid.lowest(Flesh.foot(s.own()), V3.Z)).isCloseTo(0, within(DRAWN));
        assertThat(Solid.lowest(Flesh.foot(s.other()), V3.Z)).isCloseTo(0, within(DRAWN));
        assertThat(Solid.lowest(List.of(Flesh.head(s)), V3.Z)).isCloseTo(0, within(DRAWN));
    }

    @Test
    void feetAreFlatWhereTheyStand() {
        for (String name : List.of("sitting", "slump", "standing", "standing bend", "lying knees bent")) {
            Position position = Position.get(name);
            Skeleton s = Rest.of(supportOf(position), position.posture(), Ground.FLOOR)
                    .skeleton();
            assertThat(s.own().foot().up().z()).as(name).isGreaterThan(0.98);
            assertThat(Solid.lowest(Flesh.foot(s.own()), V3.Z)).as(name).isCloseTo(0, within(DRAWN));
        }
    }

    @Test
    void aBridgeRestsOnShouldersAndFeet() {
        Posture bridge = Posture.parse("hip 5 knee 85 other-hip 5 other-knee 85 neck 10");
        Skeleton s = Rest.of(Support.LYING, bridge, Ground.FLOOR).skeleton();
        assertThat(Solid.lowest(List.of(Flesh.chest(s.trunk())), V3.Z)).isCloseTo(0, within(0.003));
        assertThat(Solid.lowest(Flesh.foot(s.own()), V3.Z)).isCloseTo(0, within(0.003));
        assertThat(Solid.lowest(List.of(Flesh.belly(s.trunk())), V3.Z)).isGreaterThan(0.05);
    }

    @Test
    void aRaisedLegKeepsItsAngle() {
        Posture raised = Posture.parse("hip 60 knee 20 ankle 10 other-ankle -20");
        Skeleton s = Rest.of(Support.LYING, raised, Ground.FLOOR).skeleton();
        double hip = Math.toDegrees(
                Math.acos(s.own().thigh().up().dot(s.trunk().pelvis().up())));
        double knee = Math.toDegrees(
                Math.acos(s.own().thigh().up().dot(s.own().shank().up())));
        assertThat(hip).isCloseTo(60, within(1e-6));
        assertThat(knee).isCloseTo(20, within(1e-6));
        assertThat(s.own().toe().z()).isGreaterThan(s.own().knee().z());
    }

    @ParameterizedTest
    @EnumSource(
            value = Support.class,
            names = {"LYING", "SITTING", "PRONE", "SIDE_LYING", "LONG_SITTING"})
    void aMovingLegDoesNotJump(Support support) {
        // One degree a step; a point of the leg is at most about 0.6 of stature from the hip.
        double most = 4.5 * Math.toRadians(1) * 0.6;
        for (Joint joint : List.of(Joint.HIP, Joint.KNEE, Joint.HIP_ABDUCTION)) {
            V3 before = null;
            // Nobody sits with the hip straight.
            int first = support == Support.SITTING && joint == Joint.HIP ? 60 : 0;
            for (int angle = first; angle <= first + 55; angle++) {
                Posture posture = Position.get(support.key()).posture().with(joint, angle);
                V3 toe =
                        Rest.of(support, posture, Ground.FLOOR).skeleton().own().toe();
                if (before != null) {
                    assertThat(toe.distance(before))
                            .as("%s %s %d", support, joint, angle)
                            .isLessThan(most);
                }
                before = toe;
            }
        }
    }
}
