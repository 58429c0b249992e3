package slipway.mechanics.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Person;
import slipway.mechanics.evidence.EvidenceHash;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.parameters.ParameterFile;
import slipway.mechanics.pathway.PathwayModel;

class CalibrationTest {
    /** Rounding: the file carries eight digits, the optimiser stops at about 1e-8 of the cost. */
    private static final double REFIT = 1e-3;

    private static final EvidenceTable TABLE = EvidenceTable.bundled();

    @Test
    void refitLandsOnTheCommittedFile() {
        FittedParameters committed = FittedParameters.bundled();
        FittedParameters refit = Calibrator.run(TABLE).parameters();
        for (int i = 0; i < refit.mean().length; i++) {
            assertThat(refit.mean()[i]).isCloseTo(committed.mean()[i], within(REFIT));
            assertThat(refit.personSd()[i]).isCloseTo(committed.personSd()[i], within(REFIT));
        }
        assertThat(committed.evidenceSha256()).isEqualTo(EvidenceHash.sha256());
    }

    @Test
    void rowsKeptForValidationAreNeverFittedAndLaterRowsAreListed() {
        Calibrator.Outcome outcome = Calibrator.run(TABLE);
        assertThat(outcome.fit().residuals()).extracting(r -> r.row().use()).containsOnly("calibrate");
        assertThat(outcome.skipped()).extracting(EvidenceTable.Skipped::id).contains("rade2015bi", "wright1996a");
    }

    @Test
    void parameterFileReadsBackAsWritten() {
        FittedParameters fit = FittedParameters.bundled();
        FittedParameters back = ParameterFile.read(ParameterFile.write(fit, List.of("a note")));
        assertThat(back.mean()).containsExactly(fit.mean(), within(1e-7));
        assertThat(back.evidenceSha256()).isEqualTo(fit.evidenceSha256());
    }

    @Test
    void drawsAreReproducible() {
        var one = FittedParameters.bundled().draws(8, 3);
        var two = FittedParameters.bundled().draws(8, 3);
        var model = new PathwayModel(Person.STANDARD, one);
        var again = new PathwayModel(Person.STANDARD, two);
        var rows = TABLE.calibrating();
        assertThat(RowPredictor.predict(model, rows).get("rade2015uni"))
                .containsExactly(RowPredictor.predict(again, rows).get("rade2015uni"));
    }

    @Test
    void badTableGivesAllItsMistakes() {
        String text = """
                id,tract,site,from,to,quantity,relation,mean,sd
                a,sciatic-tibial,knob,hip 0,hip 900,excursion,,x,-1
                a,sciatic-tibial,popliteal fossa,,hip 30,excursion,,,
                o,sciatic-tibial,,,,order,a < missing,,
                """;
        assertThatThrownBy(() -> EvidenceTable.parse(text, "mine.csv"))
                .hasMessageContaining("mine.csv")
                .hasMessageContaining("unknown site \"knob\"")
                .hasMessageContaining("hip must be within -40 and 140 deg, was 900")
                .hasMessageContaining("mean must be a number, was \"x\"")
                .hasMessageContaining("sd must be positive")
                .hasMessageContaining("\"a\" is given twice")
                .hasMessageContaining("names \"missing\"");
        assertThatThrownBy(() -> EvidenceTable.parse("a,b\n1,2\n", "other.csv"))
                .hasMessageContaining("lacks id, tract");
        assertThatThrownBy(() -> EvidenceTable.parse("", "empty.csv")).hasMessageContaining("no rows");
    }
}
