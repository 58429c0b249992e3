package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SlowDownTest {
    @Test
    void firstFailuresCostNothingThenThePauseDoublesUpToHalfAnHour() {
        assertThat(SlowDown.pause(3)).isZero();
        assertThat(SlowDown.pause(4)).isEqualTo(Duration.ofSeconds(2));
        assertThat(SlowDown.pause(5)).isEqualTo(Duration.ofSeconds(4));
        assertThat(SlowDown.pause(12)).isEqualTo(Duration.ofSeconds(512));
        assertThat(SlowDown.pause(14)).isEqualTo(Duration.ofMinutes(30));
        assertThat(SlowDown.pause(1000)).isEqualTo(Duration.ofMinutes(30));
    }

    @Test
    void guessingForADayStaysBelowAHundredAttempts() {
        // A hundred failed attempts in a row at most (NIST SP 800-63B-4, 2025, section 3.2.2).
        Duration spent = Duration.ZERO;
        int attempts = 0;
        while (spent.compareTo(Duration.ofDays(1)) < 0) {
            attempts++;
            spent = spent.plus(SlowDown.pause(attempts));
        }
        assertThat(attempts).isLessThan(100);
    }

    @Test
    void aPauseThatAWrongClockSetLocksNobodyOut() {
        Instant now = Instant.parse("2026-03-02T12:00:00Z");
        assertThat(SlowDown.waiting(Optional.of(now.plusSeconds(1800)), now)).isPresent();
        assertThat(SlowDown.waiting(Optional.of(now.plusSeconds(1801)), now)).isEmpty();
        assertThat(SlowDown.waiting(Optional.of(now), now)).isEmpty();
    }
}
