package slipway.reasoning.tolerance;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WeightedTest {
    @Test
    void valuesThatOneFloatCannotTellApartStillMakeAnOrderedInterval() {
        double[] values = {0.1, 0.8681255332233727, 0.8681255331591394};
        assertThat((float) values[1]).isEqualTo((float) values[2]);

        Interval interval = Weighted.interval(values, new double[] {0.1, 0.8, 0.1});

        assertThat(interval.median()).isLessThanOrEqualTo(interval.high());
        assertThat(interval.low()).isEqualTo(0.1);
    }
}
