package slipway.web.shell;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times as the pages say them, in the time zone of the server. */
public final class Times {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);

    private Times() {}

    /** Day and minute. */
    public static String minute(Instant at) {
        return MINUTE.format(at.atZone(ZoneId.systemDefault()));
    }

    /** Day. */
    public static String day(Instant at) {
        return DAY.format(at.atZone(ZoneId.systemDefault()));
    }

    /** Day. */
    public static String day(LocalDate day) {
        return DAY.format(day);
    }
}
