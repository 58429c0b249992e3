package slipway.web.hours;

import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.time.ZonedDateTime;

/** What a fuzzer calls (Jazzer finds the method by its name): hours that answer every time of a week, or none. */
public final class OpeningHoursFuzzer {
    private static final ZonedDateTime MONDAY = ZonedDateTime.of(2026, 3, 2, 0, 0, 0, 0, ZoneId.of("UTC"));
    private static final int HOURS_OF_A_WEEK = 168;

    private OpeningHoursFuzzer() {}

    public static void fuzzerTestOneInput(byte[] data) {
        OpeningHours.read(new String(data, StandardCharsets.UTF_8)).ifPresent(hours -> {
            for (int hour = 0; hour < HOURS_OF_A_WEEK; hour += 6) {
                hours.isOpenAt(MONDAY.plusHours(hour));
            }
        });
    }
}
