package slipway.study.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;

class LoadTablesTest {
    private static final LoadTable TABLE = LoadTables.compute();
    /** Model difference: the table solves a row of postures one after the other, each from the last solution. */
    private static final double SOLVER_PCT = 1e-6;

    @Test
    void holdsWhatTheNerveModelAnswers() {
        var how = Tabulation.standard();
        var model = new PathwayModel(
                new Person(LoadTable.statures().get(1)),
                FittedParameters.bundled().draws(how.draws(), how.seed()));
        Site site = Site.get(TABLE.places().get(2).site());
        Posture rest = Position.get("lying knees bent").posture();
        double raised = model.respond(Posture.parse("hip 50")).strainAt(site)[7];
        double atRest = model.respond(rest).strainAt(site)[7];
        assertThat(TABLE.truth(1, 2, 7, 0).atRaise(50)).isEqualTo(100 * (raised - atRest), within(SOLVER_PCT));
    }

    @Test
    void laddersRiseAndEndAtTheHardestExercise() {
        for (int place = 0; place < TABLE.places().size(); place++) {
            double[] rungs = TABLE.seen(1, place).rungPct();
            assertThat(rungs).isSorted();
            assertThat(rungs[rungs.length - 1]).isGreaterThan(0.5);
        }
    }

    @Test
    void raiseAndLoadAreInverse() {
        LoadProfile profile = TABLE.seen(1, 0);
        for (double deg = 20; deg < 95; deg += 7.5) {
            assertThat(profile.raiseAt(profile.atRaise(deg))).isEqualTo(deg, within(1e-9));
        }
    }

    @Test
    void nervesDiffer() {
        double[] onsets = new double[40];
        Arrays.setAll(onsets, draw -> TABLE.truth(1, 0, draw, 0.5).atRaise(60));
        assertThat(Arrays.stream(onsets).distinct().count()).isEqualTo(40);
    }
}
