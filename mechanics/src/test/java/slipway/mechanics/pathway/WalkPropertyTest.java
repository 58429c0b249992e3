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
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.FittedParameters;

/** Whoever goes on from posture to posture gets what whoever asks for each one alone gets. */
class WalkPropertyTest {
    private static final PathwayModel MODEL =
            new PathwayModel(Person.STANDARD, FittedParameters.bundled().draws(40, 5));

    /** Both solutions are accurate to 1e-9 m, so they may differ by twice that. */
    private static final double SOLVER_MM = 2e-6;

    /** The same over the shortest cell, 5 mm, at both of its ends. */
    private static final double SOLVER_STRAIN = 2 * 2e-9 / 0.005;

    @Test
    void motionsWithJumpsBetweenThemAgree() {
        var random = new Random(20261126);
        NerveModel walk = MODEL.walk();
        for (int exercise = 0; exercise < 40; exercise++) {
            for (Posture posture : motion(random)) {
                agree(posture, walk.respond(posture), MODEL.respond(posture));
            }
        }
    }

    @Test
    void aWalkLeavesNoTraceInTheModel() {
        var random = new Random(3);
        Posture asked = Posture.parse("hip 40 knee 20 neck 10");
        double[] before = MODEL.respond(asked).glideMmAt(Site.get("popliteal fossa"));
        NerveModel walk = MODEL.walk();
        NerveModel other = MODEL.walk();
        List<Posture> way = motion(random);
        List<PostureResponse> alone = MODEL.walk().respondAlong(way);
        for (int i = 0; i < way.size(); i++) {
            PostureResponse here = walk.respond(way.get(i));
            other.respond(motion(random).get(0));
            for (Site site : Site.all().values()) {
                assertThat(here.glideMmAt(site)).isEqualTo(alone.get(i).glideMmAt(site));
            }
        }
        assertThat(MODEL.respond(asked).glideMmAt(Site.get("popliteal fossa"))).isEqualTo(before);
    }

    private static void agree(Posture posture, PostureResponse one, PostureResponse other) {
        for (Site site : Site.all().values()) {
            assertThat(one.glideMmAt(site))
                    .as("glide at %s, %s", site.name(), posture)
                    .containsExactly(other.glideMmAt(site), within(SOLVER_MM));
            assertThat(one.strainAt(site))
                    .as("strain at %s, %s", site.name(), posture)
                    .containsExactly(other.strainAt(site), within(SOLVER_STRAIN));
        }
        assertThat(one.meanPositiveStrain(Tract.SCIATIC_TIBIAL))
                .containsExactly(other.meanPositiveStrain(Tract.SCIATIC_TIBIAL), within(SOLVER_STRAIN));
    }

    /** Even steps from one random posture towards another, of one length or turning back, as exercises do. */
    private static List<Posture> motion(Random random) {
        Posture from = random(random);
        Posture to = random(random);
        int steps = 2 + random.nextInt(6);
        var way = new ArrayList<Posture>();
        for (int i = 0; i <= steps; i++) {
            way.add(from.towards(to, (double) i / (2 * steps)));
        }
        if (random.nextBoolean()) {
            way.add(from);
        }
        return way;
    }

    private static Posture random(Random random) {
        Posture posture = Posture.reference();
        for (Joint joint : Geometry.joints(Pathway.BACK)) {
            for (Limb limb : Limb.values()) {
                if (random.nextInt(3) > 0) {
                    posture = posture.with(
                            joint, limb, joint.lowDeg() + random.nextDouble() * (joint.highDeg() - joint.lowDeg()));
                }
            }
        }
        return posture;
    }
}
