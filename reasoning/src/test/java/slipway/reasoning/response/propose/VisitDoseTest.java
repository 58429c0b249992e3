package slipway.reasoning.response.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.reasoning.response.ladder.HomeDose;

class VisitDoseTest {
    private static final int MOST_SESSIONS = 2;

    private static HomeDose dose(int repetitions, int sessions) {
        return new HomeDose(repetitions, 1, sessions, 1, 3);
    }

    private static HomeDose next(HomeDose given, HomeDose now, boolean flared, double limit) {
        // Any measure that rises with the dose will do as an estimate.
        return VisitDose.next(given, now, flared, MOST_SESSIONS, dose -> dose.dailyRepetitions() <= limit);
    }

    @Test
    void whatWasEasedComesBackWithinTheLimit() {
        assertThat(next(dose(8, 2), dose(3, 1), false, 16)).isEqualTo(dose(8, 2));
        assertThat(next(dose(8, 2), dose(3, 1), false, 5)).isEqualTo(dose(5, 1));
    }

    @Test
    void afterAFlareNoMoreThanWasGivenOrReached() {
        assertThat(next(dose(5, 1), dose(3, 1), true, 100)).isEqualTo(dose(5, 1));
        assertThat(next(dose(3, 1), dose(5, 1), true, 100)).isEqualTo(dose(5, 1));
        assertThat(next(dose(8, 2), dose(5, 1), true, 3)).isEqualTo(dose(3, 1));
    }

    @Test
    void neverMoreThanOneStepDoubleOrTheSessionsOfTheTherapist() {
        for (HomeDose given : List.of(dose(3, 1), dose(5, 2), dose(8, 1), dose(10, 2))) {
            for (HomeDose now : List.of(dose(3, 1), dose(5, 1), dose(8, 2))) {
                HomeDose next = next(given, now, false, 100);
                int reached = Math.max(given.dailyRepetitions(), now.dailyRepetitions());
                assertThat(next.dailyRepetitions()).isBetween(reached, 2 * reached);
                assertThat(next.sessionsPerDay()).isLessThanOrEqualTo(MOST_SESSIONS);
            }
        }
    }

    @Test
    void withNothingWithinTheLimitTheLeast() {
        assertThat(next(dose(8, 2), dose(5, 1), false, 0)).isEqualTo(dose(3, 1));
    }

    @Test
    void theRangeIsWholeAgain() {
        var half = new HomeDose(3, 1, 1, 0.5, 3);
        assertThat(next(dose(5, 1), half, false, 100).rangeFraction()).isEqualTo(1);
    }
}
