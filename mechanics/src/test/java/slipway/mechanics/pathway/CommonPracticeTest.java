package slipway.mechanics.pathway;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.FittedParameters;

/**
 * Facts of common practice (no source) about what loads and what relieves the back-of-leg nerve, held against the mean
 * positive strain along the tract. Common practice speaks of most people, so most draws must agree.
 */
class CommonPracticeTest {
    private static final PathwayModel MODEL =
            new PathwayModel(Person.STANDARD, FittedParameters.bundled().draws(128, 4));

    /** Common practice says "most people": nine draws of ten. */
    private static final double MOST = 0.9;

    private static double[] load(String posture) {
        return MODEL.respond(Posture.parse(posture)).meanPositiveStrain(Tract.SCIATIC_TIBIAL);
    }

    private static double shareBelow(double[] less, double[] more) {
        int below = 0;
        for (int d = 0; d < less.length; d++) {
            below += less[d] < more[d] ? 1 : 0;
        }
        return (double) below / less.length;
    }

    private static String with(String position, String change) {
        return Position.get(position).posture().withParsed(change).text();
    }

    @Test
    void bendingTheKneeRelievesARaisedLeg() {
        assertThat(shareBelow(load("hip 50 knee 40"), load("hip 50"))).isGreaterThanOrEqualTo(MOST);
    }

    @Test
    void pointingTheFootRelieves() {
        assertThat(shareBelow(load("hip 50 ankle -30"), load("hip 50"))).isGreaterThanOrEqualTo(MOST);
    }

    @Test
    void slumpingAndLiftingTheHeadAdd() {
        assertThat(shareBelow(load(with("sitting", "knee 30")), load(with("slump", "knee 30 neck 0"))))
                .isGreaterThanOrEqualTo(MOST);
        assertThat(shareBelow(load(with("slump", "knee 30 neck 0")), load(with("slump", "knee 30 neck 45"))))
                .isGreaterThanOrEqualTo(MOST);
    }

    @Test
    void lyingLoadsLessThanSittingAndSittingLessThanSlumping() {
        assertThat(shareBelow(load(with("lying", "")), load(with("sitting", ""))))
                .isGreaterThanOrEqualTo(MOST);
        assertThat(shareBelow(load(with("sitting", "")), load(with("slump", ""))))
                .isGreaterThanOrEqualTo(MOST);
    }

    @Test
    void sittingLoadsLessThanTheLimitOfMostPeopleWithASixtyDegreeRaise() {
        assertThat(shareBelow(load(with("sitting", "")), load(with("lying", "hip 60"))))
                .isGreaterThanOrEqualTo(MOST);
    }
}
