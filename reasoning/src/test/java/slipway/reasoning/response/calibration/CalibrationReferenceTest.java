package slipway.reasoning.response.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CalibrationReferenceTest {
    /** Exact intervals: SciPy 1.17.1 {@code binomtest(k, n).proportion_ci(0.95, "exact")}; 0 of 10 also by 1 - 0.025^0.1. */
    @Test
    void exactIntervals() {
        interval(0, 10, 0, 1 - Math.pow(0.025, 0.1));
        interval(3, 20, 0.03207093718554477, 0.37892682654529564);
        interval(45, 300, 0.11156252243012549, 0.1955164406839982);
        interval(10, 10, Math.pow(0.025, 0.1), 1);
    }

    private static void interval(int hits, int of, double low, double high) {
        assertThat(Calibration.share(hits, of).low()).isCloseTo(low, within(1e-9));
        assertThat(Calibration.share(hits, of).high()).isCloseTo(high, within(1e-9));
    }

    /** By hand: errors 0.04, 0.09, 0.64, 0.01, mean 0.195; share 0.5. */
    @Test
    void brierScoreByHand() {
        var weeks = List.of(new Week(0.2, false), new Week(0.7, true), new Week(0.2, true), new Week(0.1, false));
        Calibration calibration = Calibration.of(weeks);
        assertThat(calibration.brier()).isCloseTo(0.195, within(1e-12));
        assertThat(calibration.brierOfShare()).isCloseTo(0.25, within(1e-12));
        assertThat(calibration.bins()).extracting(Bin::weeks).containsExactly(1, 2, 1);
    }

    /** Chances that come true agree in nearly all bins, and beat one chance for all; doubled ones do not. */
    @Test
    void tellsRightChancesFromWrongOnes() {
        var right = new ArrayList<Week>();
        var wrong = new ArrayList<Week>();
        var random = new Random(1);
        for (int i = 0; i < 4000; i++) {
            double chance = 0.5 * random.nextDouble();
            boolean flared = random.nextDouble() < chance;
            right.add(new Week(chance, flared));
            wrong.add(new Week(2 * chance, flared));
        }
        Calibration good = Calibration.of(right);
        assertThat(good.bins().stream().filter(Bin::agrees).count()).isEqualTo(5);
        assertThat(good.brier()).isLessThan(good.brierOfShare());
        assertThat(Calibration.of(wrong).bins().stream().filter(Bin::agrees).count())
                .isLessThanOrEqualTo(1);
    }

    @Test
    void chancesAreChances() {
        assertThatThrownBy(() -> new Week(Double.NaN, true)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Calibration.of(List.of()).brier()).isNaN();
    }
}
