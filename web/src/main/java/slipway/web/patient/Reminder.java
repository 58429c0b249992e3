package slipway.web.patient;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;

/**
 * A reminder for the person's own calendar, RFC 5545: once a day at a time by the phone's clock. It says nothing of
 * health or clinic, because calendars lie open on screens and with third parties.
 */
final class Reminder {
    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss");
    private static final DateTimeFormatter UTC = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'");

    private Reminder() {}

    /**
     * The calendar file.
     *
     * @param id the same for the same person, so that a second one replaces the first
     * @param from first day
     * @param until last day
     * @param words short, without a comma, semicolon or line break
     */
    static String file(String id, LocalDate from, LocalDate until, LocalTime at, String words, Instant now) {
        List<String> lines = List.of(
                "BEGIN:VCALENDAR",
                "VERSION:2.0",
                "PRODID:-//Slipway//Reminder//EN",
                "BEGIN:VEVENT",
                "UID:" + id + "@slipway",
                "DTSTAMP:" + UTC.format(now.atOffset(ZoneOffset.UTC)),
                // Without a zone: seven in the evening wherever the phone is.
                "DTSTART:" + LOCAL.format(from.atTime(at)),
                "DURATION:PT10M",
                "RRULE:FREQ=DAILY;UNTIL=" + LOCAL.format(until.atTime(LocalTime.of(23, 59))),
                "SUMMARY:" + words,
                "TRANSP:TRANSPARENT",
                "CLASS:PRIVATE",
                "BEGIN:VALARM",
                "ACTION:DISPLAY",
                "DESCRIPTION:" + words,
                "TRIGGER:PT0S",
                "END:VALARM",
                "END:VEVENT",
                "END:VCALENDAR");
        return String.join("\r\n", lines) + "\r\n";
    }
}
