package slipway.care.record.remind;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import slipway.exercises.exercise.Language;

/**
 * A person whose reminder of a day is not decided yet, or is to be sent again.
 *
 * @param address where to; it belongs into no log and no message
 * @param attempts how often it was tried today
 * @param lastSent the newest day before on which one was sent
 * @param heardAt when the person last reported anything
 */
public record Due(
        String personId,
        String clinicId,
        String address,
        Language language,
        int attempts,
        Optional<LocalDate> lastSent,
        Optional<Instant> heardAt) {
    /** Without the address and whatever else tells who it is. */
    @Override
    public String toString() {
        return "Due[" + personId + "]";
    }
}
