package slipway.care.follow;

import static slipway.care.follow.CheckInColumn.CHECKIN_ID;
import static slipway.care.follow.CheckInColumn.NEXT_MORNING;
import static slipway.care.follow.CheckInColumn.REPORTED_AT;
import static slipway.care.follow.CheckInColumn.SESSION_ID;
import static slipway.care.follow.CheckInColumn.STARTED_AT;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.response.checkin.CheckIn;

/** What times owe each other, and rows among themselves. */
final class AcrossRows {
    private static final Duration CLOCKS = Duration.ofMinutes(
            (long) (60 * Coefficients.load("response/course.csv").value("clock-difference")));

    private record Known(int line, CheckIn checkIn) {}

    private final Map<String, Known> byId = new HashMap<>();
    private final Map<String, Known> bySession = new HashMap<>();
    private final Set<String> told = new HashSet<>();
    private final List<CheckInRow> laterRows = new ArrayList<>();

    void check(CheckInRow row, CheckIn checkIn) {
        times(row, checkIn);
        Known known = byId.putIfAbsent(checkIn.id(), new Known(row.line(), checkIn));
        if (known != null && !known.checkIn().sameContent(checkIn)) {
            row.add(CHECKIN_ID, "%s is in line %d with other content".formatted(checkIn.id(), known.line()));
        }
        String session = key(checkIn);
        Known other = bySession.putIfAbsent(session, new Known(row.line(), checkIn));
        if (other != null && !other.checkIn().startedAt().isEqual(checkIn.startedAt())) {
            row.add(
                    STARTED_AT,
                    "session %s of %s began at %s in line %d"
                            .formatted(
                                    checkIn.sessionId(),
                                    checkIn.exercise(),
                                    other.checkIn().startedAt(),
                                    other.line()));
        }
        if (checkIn.worst().isPresent()) {
            told.add(session);
        } else {
            laterRows.add(row);
        }
    }

    private static void times(CheckInRow row, CheckIn checkIn) {
        Duration early = Duration.between(checkIn.reportedAt(), checkIn.startedAt());
        if (early.compareTo(CLOCKS) > 0) {
            row.add(
                    REPORTED_AT,
                    "must not be before started_at by more than two clocks may differ (%d h), was %s after a start at %s"
                            .formatted(CLOCKS.toHours(), checkIn.reportedAt(), checkIn.startedAt()));
        }
        boolean sameDay =
                !checkIn.reportedAt().toLocalDate().isAfter(checkIn.startedAt().toLocalDate());
        if (checkIn.nextMorning().isPresent() && sameDay) {
            row.add(
                    NEXT_MORNING,
                    "cannot be known on the day of the session; started_at is %s and reported_at %s"
                            .formatted(checkIn.startedAt(), checkIn.reportedAt()));
        }
    }

    /** Rows that only tell what came later need the session itself. */
    void finish() {
        for (CheckInRow row : laterRows) {
            String session = row.required(SESSION_ID) + " " + row.required(CheckInColumn.EXERCISE);
            if (!told.contains(session)) {
                row.add(SESSION_ID, "no row tells how this session went");
            }
        }
    }

    private static String key(CheckIn checkIn) {
        return checkIn.sessionId() + " " + checkIn.exercise();
    }
}
