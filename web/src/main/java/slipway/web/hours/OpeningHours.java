package slipway.web.hours;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Opening hours of a week, as {@code Mon-Fri 08:00-18:00; Sat 09:00-12:00}. Holidays are not known: whoever calls then
 * hears it from the telephone.
 */
public final class OpeningHours {
    /** Key of the setting of a clinic. */
    public static final String SETTING = "openingHours";

    /** What holds if nobody has set it. */
    public static final String USUAL = "Mon-Fri 08:00-18:00";

    private static final Pattern TOKEN =
            Pattern.compile("([A-Za-z]{3})(?:-([A-Za-z]{3}))?|(\\d{1,2}:\\d{2})-(\\d{1,2}:\\d{2})");
    private static final int DAYS = 7;
    /** Nothing is asked about longer times; keeps a wrong clock from counting for ever. */
    private static final int MOST_DAYS = 60;

    private record Span(LocalTime from, LocalTime to) {}

    private static final Map<String, DayOfWeek> NAMES = names();

    private final Map<DayOfWeek, List<Span>> week;

    private OpeningHours(Map<DayOfWeek, List<Span>> week) {
        this.week = week;
    }

    private static Map<String, DayOfWeek> names() {
        var names = new HashMap<String, DayOfWeek>();
        for (DayOfWeek day : DayOfWeek.values()) {
            names.put(day.name().substring(0, 3), day);
        }
        return Map.copyOf(names);
    }

    /** Reads the setting; empty if it is not to be understood. Blank text means never open. */
    public static Optional<OpeningHours> read(String text) {
        var week = new EnumMap<DayOfWeek, List<Span>>(DayOfWeek.class);
        for (String part : text.split(";", -1)) {
            if (!part.isBlank() && !readPart(part, week)) {
                return Optional.empty();
            }
        }
        return Optional.of(new OpeningHours(week));
    }

    /** Days and then times; false if something else stands there, or one of the two is missing. */
    private static boolean readPart(String part, Map<DayOfWeek, List<Span>> week) {
        var days = new ArrayList<DayOfWeek>();
        var spans = new ArrayList<Span>();
        Matcher token = TOKEN.matcher(part);
        try {
            while (token.find()) {
                if (token.group(3) != null) {
                    spans.add(span(token.group(3), token.group(4)));
                } else if (!spans.isEmpty()) {
                    return false;
                } else {
                    days.addAll(days(token));
                }
            }
        } catch (DateTimeException e) {
            return false;
        }
        days.forEach(day -> week.computeIfAbsent(day, none -> new ArrayList<>()).addAll(spans));
        return !days.isEmpty()
                && !spans.isEmpty()
                && TOKEN.matcher(part).replaceAll("").replaceAll("[ ,]", "").isEmpty();
    }

    private static Span span(String from, String to) {
        LocalTime start = time(from);
        LocalTime end = time(to);
        if (!start.isBefore(end)) {
            throw new DateTimeException("opens at " + from + " and closes at " + to);
        }
        return new Span(start, end);
    }

    private static LocalTime time(String text) {
        return LocalTime.parse(text.length() < "00:00".length() ? "0" + text : text);
    }

    private static List<DayOfWeek> days(Matcher token) {
        DayOfWeek first = day(token.group(1));
        DayOfWeek last = token.group(2) == null ? first : day(token.group(2));
        var days = new ArrayList<DayOfWeek>();
        for (int i = 0; i < DAYS; i++) {
            days.add(first.plus(i));
            if (first.plus(i) == last) {
                break;
            }
        }
        return days;
    }

    private static DayOfWeek day(String name) {
        DayOfWeek day = NAMES.get(name.toUpperCase(Locale.ROOT));
        if (day == null) {
            throw new DateTimeException("no day " + name);
        }
        return day;
    }

    /** Whether the clinic is open at a time by its own clock. */
    public boolean isOpenAt(ZonedDateTime time) {
        return week.getOrDefault(time.getDayOfWeek(), List.of()).stream()
                .anyMatch(span -> !time.toLocalTime().isBefore(span.from())
                        && time.toLocalTime().isBefore(span.to()));
    }

    /** How long the clinic was open between two times, counted over 60 days at most; zero if they are in no order. */
    public Duration openBetween(Instant from, Instant to, ZoneId zone) {
        Duration open = Duration.ZERO;
        LocalDate first = LocalDate.ofInstant(from, zone);
        LocalDate last = LocalDate.ofInstant(to, zone);
        for (int i = 0; i <= MOST_DAYS && !first.plusDays(i).isAfter(last); i++) {
            LocalDate day = first.plusDays(i);
            for (Span span : week.getOrDefault(day.getDayOfWeek(), List.of())) {
                Instant start = later(day.atTime(span.from()).atZone(zone).toInstant(), from);
                Instant end = earlier(day.atTime(span.to()).atZone(zone).toInstant(), to);
                open = start.isBefore(end) ? open.plus(Duration.between(start, end)) : open;
            }
        }
        return open;
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
