package slipway.mechanics.pathway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.parameters.Prior;

/** Identities that hold whatever the parameters are. */
class PathwayModelPropertyTest {
    /** Model difference: what the mesh may do to a glide, mm; a tenth of the smallest published sd of a large glide. */
    private static final double MESH_MM = 0.2;

    /** Model difference: what the mesh may do to a strain; half of the smallest published sd. */
    private static final double MESH_STRAIN = 0.0025;

    private static final DrawSet DRAWS = FittedParameters.bundled().draws(24, 11);
    private static final PathwayModel MODEL = new PathwayModel(Person.STANDARD, DRAWS);

    /** Both legs on the same mesh and every site in its place, so that symmetry is exact. */
    private static final PathwayModel SYMMETRIC =
            new PathwayModel(Person.STANDARD, new DrawSet(DRAWS.vectors(), 0), new MeshDensity(0.010, 0.025, 1, 1));

    /** Rounding: the solver's tolerance, in mm, several times. */
    private static final double SOLVER_MM = 1e-6;

    private static final Site CONUS = Site.get("conus");

    private static Posture random(Random random) {
        Posture posture = Posture.reference();
        for (Joint joint : Geometry.joints(Pathway.BACK)) {
            for (Limb limb : Limb.values()) {
                double angle = joint.lowDeg() + random.nextDouble() * (joint.highDeg() - joint.lowDeg());
                posture = posture.with(joint, limb, angle);
            }
        }
        return posture;
    }

    @Test
    void nothingMovesInTheReferencePosture() {
        PostureResponse response = MODEL.respond(Posture.reference());
        for (Site site : Site.all().values()) {
            assertThat(response.glideMmAt(site)).containsOnly(0.0);
            assertThat(response.strainAt(site)).containsOnly(0.0);
        }
    }

    @Test
    void elongationOfTheNerveIsThatOfTheBedAndTheSlidesOfItsEnds() {
        var random = new Random(3);
        var single = new PathwayModel(Person.STANDARD, DrawSet.single(Prior.medians()));
        for (int i = 0; i < 10; i++) {
            Posture posture = random(random);
            for (Tract tract : Pathway.BACK.tracts()) {
                TractProfile profile = single.profile(posture, tract);
                double nerveMm = single.nerveElongationMm(posture, tract)[0];
                double bedMm = single.bedElongationMm(posture, tract)[0];
                double endsMm = profile.endSlideMm() - profile.rootSlideMm();
                assertThat(nerveMm).isCloseTo(bedMm + endsMm, within(1e-6));
            }
        }
    }

    @Test
    void mirroredPostureMovesTheConusAlike() {
        var random = new Random(5);
        for (int i = 0; i < 10; i++) {
            Posture posture = random(random);
            double[] one = SYMMETRIC.respond(posture).glideMmAt(CONUS);
            double[] other = SYMMETRIC.respond(posture.mirrored()).glideMmAt(CONUS);
            for (int d = 0; d < one.length; d++) {
                assertThat(other[d]).isCloseTo(one[d], within(SOLVER_MM));
            }
        }
    }

    @Test
    void bothLegsMoveTheConusTwiceAsFarInTheLinearRange() {
        double[] one = SYMMETRIC.respond(Posture.parse("hip 0.01")).glideMmAt(CONUS);
        double[] both =
                SYMMETRIC.respond(Posture.parse("hip 0.01 other-hip 0.01")).glideMmAt(CONUS);
        for (int d = 0; d < one.length; d++) {
            assertThat(both[d] / one[d]).isCloseTo(2, within(0.01));
        }
    }

    @Test
    void answersDoNotDependOnWhatWasAskedBefore() {
        var motion = new ArrayList<Posture>();
        for (int knee = 90; knee >= 0; knee -= 15) {
            motion.add(Posture.parse("hip 60 knee " + knee));
        }
        List<PostureResponse> along = MODEL.respondAlong(motion);
        for (int i = 0; i < motion.size(); i++) {
            double[] warm = along.get(i).glideMmAt(Site.get("posterior mid-thigh"));
            double[] cold = MODEL.respond(motion.get(i)).glideMmAt(Site.get("posterior mid-thigh"));
            for (int d = 0; d < warm.length; d++) {
                assertThat(warm[d]).isCloseTo(cold[d], within(1e-6));
            }
        }
    }

    @Test
    void hipFlexionAndKneeExtensionLoadTheNerveBehindThem() {
        Site gluteal = Site.get("deep gluteal space");
        Site popliteal = Site.get("popliteal fossa");
        double[] before = MODEL.respond(Posture.parse("hip 30")).strainAt(gluteal);
        double[] after = MODEL.respond(Posture.parse("hip 60")).strainAt(gluteal);
        double[] bent = MODEL.respond(Posture.parse("hip 60 knee 60")).strainAt(popliteal);
        double[] straight = MODEL.respond(Posture.parse("hip 60 knee 10")).strainAt(popliteal);
        for (int d = 0; d < before.length; d++) {
            assertThat(after[d]).isGreaterThan(before[d]);
            assertThat(straight[d]).isGreaterThan(bent[d]);
        }
    }

    @Test
    void meshRefinementConvergesAtSecondOrder() {
        Posture posture = Posture.parse("hip 60 knee 20 ankle 10 spine 20 neck 20 other-hip 30");
        Site site = Site.get("posterior mid-thigh");
        double[] glide = new double[3];
        for (int i = 0; i < 3; i++) {
            var density = MeshDensity.STANDARD.refined(1 << i);
            glide[i] = new PathwayModel(Person.STANDARD, DrawSet.single(Prior.medians()), density)
                    .respond(posture)
                    .glideMmAt(site)[0];
        }
        double ratio = (glide[0] - glide[1]) / (glide[1] - glide[2]);
        assertThat(ratio).isBetween(3.0, 5.0);
    }

    @Test
    void standardMeshIsCloseToAFineOne() {
        Posture posture = Posture.parse("hip 60 knee 20 ankle 10 other-hip 40");
        DrawSet draw = DrawSet.single(Prior.medians());
        PostureResponse standard = new PathwayModel(Person.STANDARD, draw).respond(posture);
        PostureResponse fine =
                new PathwayModel(Person.STANDARD, draw, MeshDensity.STANDARD.refined(8)).respond(posture);
        for (Site site : Site.all().values()) {
            assertThat(standard.glideMmAt(site)[0]).as(site.name()).isCloseTo(fine.glideMmAt(site)[0], within(MESH_MM));
            assertThat(standard.strainAt(site)[0])
                    .as(site.name())
                    .isCloseTo(fine.strainAt(site)[0], within(MESH_STRAIN));
        }
    }

    @Test
    void jointsWithoutAMomentArmAreNamed() {
        assertThat(PathwayModel.notModelled(Posture.parse("hip 30 hip-rotation 10 other-toes 5")))
                .containsExactly("hip-rotation", "other-toes");
    }
}
