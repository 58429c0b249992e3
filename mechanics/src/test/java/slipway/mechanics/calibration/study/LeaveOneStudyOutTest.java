package slipway.mechanics.calibration.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Joint;
import slipway.mechanics.calibration.Calibrator;
import slipway.mechanics.calibration.EvidenceRow;
import slipway.mechanics.calibration.EvidenceTable;
import slipway.mechanics.calibration.ModelForm;
import slipway.mechanics.parameters.ModelParameter;
import slipway.mechanics.parameters.Prior;

class LeaveOneStudyOutTest {
    private static final List<EvidenceRow> ROWS = EvidenceTable.bundled().calibrating();

    private static EvidenceTable table(String... ids) {
        return new EvidenceTable(
                ROWS.stream().filter(row -> List.of(ids).contains(row.id())).toList(), List.of());
    }

    private static EvidenceRow row(String id) {
        return ROWS.stream().filter(row -> row.id().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void leftOutStudyFallsBackOnThePriorThatItAloneInforms() {
        EvidenceTable two = table("robinson2019", "carroll2012");
        var folds = LeaveOneStudyOut.run(two, ModelForm.USED);
        assertThat(folds.predictions())
                .extracting(p -> p.row().id())
                .containsExactlyInAnyOrder("robinson2019", "carroll2012");
        // Nothing but robinson2019 speaks of the hip: without it the bed lengthens by prior arm times a right angle.
        double priorMm = 1000 * Prior.of(ModelParameter.HIP_ARM).median() * Math.PI / 2;
        double median = folds.predictions().stream()
                .filter(p -> p.row().id().equals("robinson2019"))
                .findFirst()
                .orElseThrow()
                .median();
        // Sampling: 512 draws of some 17 % in mirrored pairs.
        assertThat(median).isCloseTo(priorMm, within(2.0));
        assertThat(folds.largestAbsoluteZ())
                .isGreaterThanOrEqualTo(folds.rootMeanSquareZ())
                .isGreaterThanOrEqualTo(folds.meanAbsoluteZ());
    }

    @Test
    void studiesAreLeftOutWhole() {
        assertThat(LeaveOneStudyOut.studies(EvidenceTable.bundled()))
                .hasSize(9)
                .filteredOn(study -> study.startsWith("Ridehalgh"))
                .hasSize(1);
    }

    @Test
    void linearRefitMovesAPriorAsFarAsTheDataLetIt() {
        var fit = Calibrator.run(table("robinson2019", "carroll2012")).fit();
        var refit = new LinearRefit(fit);
        // A parameter that no row knows and no output hangs on moves nothing; the hip arm moves the strain at the hip.
        assertThat(refit.ofPrior(ModelParameter.HIP_ARM).get(KeyOutput.STRAIN)).isPositive();
        assertThat(refit.ofRow(row("boyd2012a"), 1).get(KeyOutput.STRAIN)).isZero();
        // A bed that would lengthen more than it does calls for a smaller arm, so for less strain.
        assertThat(refit.ofRow(row("robinson2019"), 1).get(KeyOutput.STRAIN)).isNegative();
    }

    @Test
    void assumedAnglesAreReadFromTheEvidence() {
        assertThat(AssumedAngle.joints(row("shum2013"))).containsExactly(Joint.SPINE, Joint.HIP);
        assertThat(AssumedAngle.joints(row("robinson2019"))).isEmpty();
        List<AssumedAngle> shum = AssumedAngle.list(List.of(row("shum2013")));
        assertThat(shum).hasSize(4);
        // Standing bend: both legs move alike, so both hips are in doubt together.
        var hip = shum.get(3).moved("moved", 10).orElseThrow();
        assertThat(hip.motion().to().text()).isEqualTo("hip 90 spine 60 other-hip 90");
        assertThat(hip.motion().from().text()).isEmpty();
    }
}
