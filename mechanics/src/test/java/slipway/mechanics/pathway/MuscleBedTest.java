package slipway.mechanics.pathway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Segment;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.MuscleBed.Belly;

class MuscleBedTest {
    private static final double SHARE = 0.3;

    /** A muscle spreads what the joint lengthens; it adds nothing. */
    @Test
    void sharesOfAJointAddUpToOne() {
        var bed = new JointBed(new JointZone(1, 0.1), List.of(new JointBed.Stretch(new JointZone(0.6, 0.2), SHARE)));
        assertThat(bed.share(0, 2)).isCloseTo(1, within(1e-12));
        assertThat(bed.share(0.5, 0.7)).isCloseTo(SHARE * new JointZone(0.6, 0.2).share(0.5, 0.7), within(1e-12));
        assertThat(bed.scaled(2).share(0.4, 0.8)).isCloseTo(SHARE, within(1e-12));
    }

    @Test
    void whatTheBedOfATractIsLengthenedByDoesNotDependOnTheMuscles() {
        var draws = FittedParameters.bundled().draws(4, 1);
        Posture up = Posture.parse("ankle 20");
        double[] alone =
                PathwayModel.on(MuscleBed.NONE, draws, Site.all().values()).bedElongationMm(up, Tract.SCIATIC_TIBIAL);
        double[] calf = PathwayModel.on(MuscleBed.get("calf"), draws, Site.all().values())
                .bedElongationMm(up, Tract.SCIATIC_TIBIAL);
        for (int d = 0; d < alone.length; d++) {
            assertThat(calf[d]).isCloseTo(alone[d], within(1e-9));
            assertThat(alone[d]).isGreaterThan(1);
        }
    }

    @Test
    void onlyTheBranchesThatRunInAMuscleLieInIt() {
        var geometry = new Geometry(Person.STANDARD, Pathway.BACK, MuscleBed.get("calf"));
        for (Branch branch : Branch.values()) {
            boolean inside =
                    branch.areaName().equals("tibial") || branch.areaName().equals("sural");
            assertThat(geometry.bed(Joint.ANKLE, branch).bellies())
                    .as(branch.name())
                    .hasSize(inside ? 1 : 0);
            assertThat(geometry.bed(Joint.KNEE, branch).bellies()).isEmpty();
        }
    }

    @Test
    void refusesWhatCannotBeAMuscle() {
        assertThatThrownBy(() -> new Belly(Joint.ANKLE, List.of(), Segment.SHANK, 0.7, 0.2, SHARE))
                .hasMessageContaining("from 0.7 to 0.2");
        assertThatThrownBy(() -> new Belly(Joint.ANKLE, List.of(), Segment.SHANK, 0, 1, Double.NaN))
                .hasMessageContaining("share NaN");
        var all = new Belly(Joint.ANKLE, List.of(), Segment.SHANK, 0, 1, 1);
        assertThatThrownBy(() -> new MuscleBed("all", List.of(all))).hasMessageContaining("must leave a part");
        assertThatThrownBy(() -> MuscleBed.get("none such")).hasMessageContaining("none such");
    }
}
