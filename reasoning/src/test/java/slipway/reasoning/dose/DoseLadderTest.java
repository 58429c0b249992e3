package slipway.reasoning.dose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DoseLadderTest {
    @Test
    void theCeilingIsOneStepAboveWhatWasTried() {
        assertThat(DoseLadder.ceiling(new Dose(5, 1, 2, 3))).isEqualTo(new Dose(8, 1, 2, 3));
        assertThat(DoseLadder.ceiling(new Dose(6, 1, 1, 3)).repetitions()).isEqualTo(8);
        assertThat(DoseLadder.ceiling(new Dose(10, 1, 1, 3)).repetitions()).isEqualTo(10);
    }

    @Test
    void anEasierDayIsNeverMore() {
        assertThat(DoseLadder.easierDay(new Dose(10, 2, 3, 3))).isEqualTo(new Dose(8, 1, 1, 3));
        assertThat(DoseLadder.easierDay(new Dose(3, 1, 1, 3)).repetitions()).isEqualTo(3);
        assertThat(DoseLadder.repetitions()).isSorted();
    }
}
