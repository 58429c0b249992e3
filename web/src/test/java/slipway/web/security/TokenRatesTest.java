package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class TokenRatesTest {
    private static final Instant START = Instant.parse("2026-03-02T12:00:00Z");

    @Test
    void soManyAtOnceThenSoManyASecond() {
        var rates = new TokenRates();
        for (int i = 0; i < TokenRates.AT_ONCE; i++) {
            assertThat(rates.take("a", START)).isEmpty();
        }
        assertThat(rates.take("a", START)).contains(Duration.ofSeconds(1));
        assertThat(rates.take("b", START)).isEmpty();
        Instant later = START.plusSeconds(1);
        assertThat(rates.take("a", later)).isEmpty();
        assertThat(rates.take("a", later)).isEmpty();
        assertThat(rates.take("a", later)).isPresent();
    }

    @Test
    void allowanceDoesNotGrowForEverNorWithAClockThatGoesBack() {
        var rates = new TokenRates();
        Instant longAfter = START.plus(Duration.ofDays(1));
        rates.take("a", START);
        int taken = 0;
        while (rates.take("a", longAfter).isEmpty()) {
            taken++;
        }
        assertThat(taken).isEqualTo(TokenRates.AT_ONCE);
        assertThat(rates.take("a", START)).isPresent();
    }
}
