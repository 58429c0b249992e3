package slipway.care.follow;

import static slipway.care.follow.CheckInColumn.BEFORE;
import static slipway.care.follow.CheckInColumn.KIND;
import static slipway.care.follow.CheckInColumn.NEXT_MORNING;
import static slipway.care.follow.CheckInColumn.REPETITIONS_DONE;
import static slipway.care.follow.CheckInColumn.SETTLE_MINUTES;
import static slipway.care.follow.CheckInColumn.USUAL_PAIN;
import static slipway.care.follow.CheckInColumn.WORST;

import java.util.List;

/** What the values of one row owe each other. */
final class RowRules {
    private static final List<CheckInColumn> SESSION = List.of(BEFORE, REPETITIONS_DONE, WORST, KIND);

    private RowRules() {}

    static void check(CheckInRow row) {
        if (row.broken()) {
            return;
        }
        long told = SESSION.stream().filter(row::has).count();
        boolean later = row.has(SETTLE_MINUTES) || row.has(NEXT_MORNING);
        if (told == 0 && !later) {
            row.add(BEFORE, "the row tells nothing of the session: neither how it went nor what came later");
        }
        if (told > 0 && told < SESSION.size()) {
            SESSION.stream()
                    .filter(column -> !row.has(column))
                    .forEach(column ->
                            row.add(column, "is missing; before, repetitions_done, worst and kind belong together"));
            return;
        }
        String kind = row.text(KIND).orElse("");
        if (kind.equals("pain") && !row.has(USUAL_PAIN)) {
            row.add(USUAL_PAIN, "is missing; for pain it must tell whether it is the usual one");
        }
        if (kind.equals("none") && number(row, WORST) > number(row, BEFORE)) {
            row.add(
                    KIND,
                    "must tell what was felt: worst was %d after %d before"
                            .formatted(number(row, WORST), number(row, BEFORE)));
        }
    }

    private static int number(CheckInRow row, CheckInColumn column) {
        return Integer.parseInt(row.text(column).orElse("0"));
    }
}
