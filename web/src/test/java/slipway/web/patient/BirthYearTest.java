package slipway.web.patient;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import slipway.care.record.person.Age;

class BirthYearTest {
    private static final Instant NOW = Instant.parse("2026-03-02T12:00:00Z");

    @Test
    void theYearOfADateFitsAndOfAnAgeEitherOfTwo() {
        var born = new Age.Born(LocalDate.of(1979, 12, 31));
        assertThat(BirthYear.fits(born, " 1979 ")).isTrue();
        assertThat(BirthYear.fits(born, "1980")).isFalse();
        assertThat(BirthYear.fits(born, "79")).isFalse();
        var told = new Age.Told(46, LocalDate.of(2026, 3, 2));
        assertThat(BirthYear.fits(told, "1979")).isTrue();
        assertThat(BirthYear.fits(told, "1980")).isTrue();
        assertThat(BirthYear.fits(told, "1978")).isFalse();
    }

    @Test
    void fewAreFreeAndEachFurtherOneTakesLongerUpToADay() {
        assertThat(BirthYear.lockedUntil(4, NOW)).isEmpty();
        assertThat(BirthYear.lockedUntil(5, NOW)).contains(NOW.plus(Duration.ofMinutes(15)));
        assertThat(BirthYear.lockedUntil(6, NOW)).contains(NOW.plus(Duration.ofMinutes(30)));
        assertThat(BirthYear.lockedUntil(99, NOW)).contains(NOW.plus(Duration.ofHours(24)));
    }
}
