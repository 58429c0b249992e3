package slipway.mechanics.pathway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Whether a slide that follows a known curve is guessed from its last three values. */
class ForesightTest {
    private static final double EXACT = 1e-12;

    private static double guess(ToDoubleFunction<double[]> slide, double[]... postures) {
        double[] next = move(postures[2], postures[3]);
        Foresight by = Foresight.of(next, move(postures[1], postures[2]), move(postures[0], postures[1]));
        double earlier = slide.applyAsDouble(postures[0]);
        double before = slide.applyAsDouble(postures[1]);
        double now = slide.applyAsDouble(postures[2]);
        return now + by.last() * (now - before) + by.first() * (before - earlier);
    }

    private static double[] move(double[] from, double[] to) {
        return new double[] {to[0] - from[0], to[1] - from[1]};
    }

    @Test
    void parabolaAlongALineIsMetWithEvenAndUnevenSteps() {
        ToDoubleFunction<double[]> parabola = p -> 3 + 2 * p[0] - 5 * p[0] * p[0];
        assertThat(guess(parabola, at(0, 0), at(1, 2), at(2, 4), at(3, 6)))
                .isCloseTo(parabola.applyAsDouble(at(3, 6)), within(EXACT));
        assertThat(guess(parabola, at(0, 0), at(2, 4), at(3, 6), at(4.5, 9)))
                .isCloseTo(parabola.applyAsDouble(at(4.5, 9)), within(EXACT));
    }

    @Test
    void planeIsMetByAMoveBetweenTheLastTwo() {
        ToDoubleFunction<double[]> plane = p -> 1 + 2 * p[0] - 7 * p[1];
        assertThat(guess(plane, at(0, 0), at(-5, 0), at(-10, -5), at(-15, -5)))
                .isCloseTo(plane.applyAsDouble(at(-15, -5)), within(EXACT));
    }

    @Test
    void nothingIsForeseenWithoutAMoveAndNoneFurtherThanTwiceTheLast() {
        assertThat(Foresight.of(at(4, 0), at(0, 0), at(0, 0))).isEqualTo(new Foresight(0, 0));
        assertThat(Foresight.of(at(70, 0), at(1, 0), at(0, 0))).isEqualTo(new Foresight(Foresight.FURTHEST, 0));
        assertThat(Foresight.of(at(0, 70), at(1, 0), at(0, 0))).isEqualTo(new Foresight(0, 0));
    }

    private static double[] at(double hip, double knee) {
        return new double[] {hip, knee};
    }
}
