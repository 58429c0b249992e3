package slipway.mechanics.pathway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.FittedParameters;

/** The front of the leg has no measurement to be held against: these are identities and facts of common practice. */
class FrontPathwayTest {
    private static final DrawSet DRAWS = FittedParameters.bundled().draws(32, 7);
    private static final PathwayModel FRONT = PathwayModel.of(Pathway.FRONT, Person.STANDARD, DRAWS);

    @Test
    void nothingMovesInTheReferencePosture() {
        var rest = FRONT.respond(Posture.reference());
        for (Site site : Site.of(Pathway.FRONT).values()) {
            assertThat(rest.glideMmAt(site)).containsOnly(new double[] {0.0}, within(1e-9));
        }
    }

    @Test
    void theNerveIsAsMuchLongerAsItsBedAndItsEndsTogether() {
        Posture posture = Posture.parse("hip -20 knee 90 spine 30 neck 30 other-hip 80");
        var one = PathwayModel.of(
                Pathway.FRONT,
                Person.STANDARD,
                DrawSet.single(FittedParameters.bundled().average()));
        for (Tract tract : Pathway.FRONT.tracts()) {
            double longer = one.nerveElongationMm(posture, tract)[0] - one.bedElongationMm(posture, tract)[0];
            var profile = one.profile(posture, tract);
            assertThat(longer).as(tract.key()).isCloseTo(profile.endSlideMm() - profile.rootSlideMm(), within(1e-6));
        }
    }

    /** Common practice: the test of the femoral nerve bends the knee in prone and adds hip extension. */
    @Test
    void kneeBendAndHipExtensionLoadTheFrontInEveryDraw() {
        Site thigh = Site.anywhere("front of thigh").orElseThrow();
        double[] straight = FRONT.respond(Posture.reference()).strainAt(thigh);
        double[] bent = FRONT.respond(Posture.parse("knee 100")).strainAt(thigh);
        double[] extended = FRONT.respond(Posture.parse("hip -20 knee 100")).strainAt(thigh);
        double[] flexed = FRONT.respond(Posture.parse("hip 60 knee 100")).strainAt(thigh);
        for (int d = 0; d < bent.length; d++) {
            assertThat(bent[d]).isGreaterThan(straight[d]);
            assertThat(extended[d]).isGreaterThan(bent[d]);
            assertThat(flexed[d]).isLessThan(bent[d]);
        }
    }

    /** Common practice: the side-lying slump adds the neck, and lifting the head eases it. */
    @Test
    void neckFlexionLoadsTheRootsInEveryDraw() {
        Site root = Site.anywhere("root L3 at foramen").orElseThrow();
        double[] without =
                FRONT.respond(Posture.parse("hip -10 knee 90 spine 40")).strainAt(root);
        double[] with =
                FRONT.respond(Posture.parse("hip -10 knee 90 spine 40 neck 40")).strainAt(root);
        for (int d = 0; d < with.length; d++) {
            assertThat(with[d]).isGreaterThan(without[d]);
        }
    }

    @Test
    void isNotValidatedAndKeepsOutOfTheBack() {
        assertThat(Pathway.FRONT.validated()).isFalse();
        assertThat(Pathway.BACK.tracts()).doesNotContain(Tract.FEMORAL_SAPHENOUS, Tract.FEMORAL_QUADRICEPS);
        assertThat(Site.find("groin")).isEmpty();
        assertThat(PathwayModel.notModelled(Posture.parse("ankle 10"), Pathway.FRONT))
                .containsExactly("ankle");
    }
}
