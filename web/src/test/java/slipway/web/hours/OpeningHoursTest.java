package slipway.web.hours;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OpeningHoursTest {
    private static final ZoneId MADRID = ZoneId.of("Europe/Madrid");
    private static final OpeningHours WEEK = OpeningHours.read(
                    "Mon-Thu 8:00-12:00, 13:00-18:00; Fri 08:00-12:00; Sat,Sun 10:00-11:00")
            .orElseThrow();

    /** 2026-03-02 is a Monday. */
    @ParameterizedTest
    @CsvSource({
        "2026-03-02T07:59, false",
        "2026-03-02T08:00, true",
        "2026-03-02T12:30, false",
        "2026-03-05T17:59, true",
        "2026-03-05T18:00, false",
        "2026-03-06T13:30, false",
        "2026-03-08T10:30, true"
    })
    void tellsWhetherItIsOpen(String local, boolean open) {
        ZonedDateTime time = java.time.LocalDateTime.parse(local).atZone(MADRID);
        assertThat(WEEK.isOpenAt(time)).isEqualTo(open);
    }

    @Test
    void countsOnlyTheTimeThatItWasOpen() {
        ZonedDateTime friday = ZonedDateTime.of(2026, 3, 6, 11, 0, 0, 0, MADRID);
        assertThat(between(friday, friday.plusMinutes(20))).isEqualTo(Duration.ofMinutes(20));
        // Friday 11 to 12, Saturday and Sunday an hour each, Monday 8 to 9.
        assertThat(between(friday, friday.plusDays(3).withHour(9))).isEqualTo(Duration.ofHours(4));
        assertThat(between(friday, friday.minusHours(1))).isZero();
    }

    /** On 2026-03-29 clocks in Madrid go from 2 to 3: an hour by the clock that did not pass. */
    @Test
    void anHourThatTheClockLeapsOverIsNotCounted() {
        OpeningHours night = OpeningHours.read("Sun 01:00-04:00").orElseThrow();
        ZonedDateTime before = ZonedDateTime.of(2026, 3, 28, 12, 0, 0, 0, MADRID);
        assertThat(night.openBetween(before.toInstant(), before.plusDays(2).toInstant(), MADRID))
                .isEqualTo(Duration.ofHours(2));
    }

    private static Duration between(ZonedDateTime from, ZonedDateTime to) {
        return WEEK.openBetween(from.toInstant(), to.toInstant(), MADRID);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Mon",
                "08:00-18:00",
                "Mon 18:00-08:00",
                "Mon 8-18",
                "Mon 08:00-25:00",
                "Xyz 08:00-18:00",
                "daily"
            })
    void whatIsNotToBeUnderstoodIsRefused(String text) {
        assertThat(OpeningHours.read(text)).isEmpty();
    }

    @Test
    void blankIsNeverOpen() {
        ZonedDateTime noon = ZonedDateTime.of(2026, 3, 2, 12, 0, 0, 0, MADRID);
        assertThat(OpeningHours.read(" ").orElseThrow().isOpenAt(noon)).isFalse();
    }
}
