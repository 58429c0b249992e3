package slipway.reasoning.deadlines;

import java.time.LocalDate;
import java.util.List;
import slipway.reasoning.basis.Coefficients;

/** Which deadlines a therapist is warned of. */
public final class PaperWarnings {
    private static final Coefficients NUMBERS = Coefficients.load("paper-warnings.csv");

    private PaperWarnings() {}

    /**
     * Those that are over, and those that are open and near, in the order given.
     *
     * @param treated treatment days so far, the evaluation being the first
     */
    public static List<Deadline> of(List<Deadline> deadlines, int treated, LocalDate asOf) {
        return deadlines.stream()
                .filter(due -> due.state() == Deadline.State.OVERDUE
                        || (due.state() == Deadline.State.OPEN && near(due, treated, asOf)))
                .toList();
    }

    private static boolean near(Deadline due, int treated, LocalDate asOf) {
        if (due.treatmentDay().isPresent()) {
            return due.treatmentDay().getAsInt() - treated <= NUMBERS.value("warn-treatment-days");
        }
        return due.due()
                .filter(day -> !day.isAfter(asOf.plusDays((long) NUMBERS.value("warn-days"))))
                .isPresent();
    }
}
