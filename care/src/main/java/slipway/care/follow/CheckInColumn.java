package slipway.care.follow;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The columns of a check-in file, in their order. */
enum CheckInColumn {
    CHECKIN_ID,
    SESSION_ID,
    EXERCISE,
    STARTED_AT,
    BEFORE,
    REPETITIONS_DONE,
    WORST,
    KIND,
    USUAL_PAIN,
    REACH,
    SETTLE_MINUTES,
    NEXT_MORNING,
    STILL_NUMB,
    NEW_WEAKNESS,
    EMERGENCY,
    FLARE_EXERCISE,
    REPORTED_AT;

    /** The name in the header row. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static List<String> keys() {
        return Arrays.stream(values()).map(CheckInColumn::key).toList();
    }
}
