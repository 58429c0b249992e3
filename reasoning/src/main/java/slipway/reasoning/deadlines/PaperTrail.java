package slipway.reasoning.deadlines;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What was done and sent in an episode.
 *
 * @param treatmentDays days with treatment, the evaluation among them; sorted, each once
 * @param orderInRecord whether a signed and dated order or referral is in the record
 * @param planSent day on which the plan was sent to the physician, with proof
 * @param certified day on which a physician first signed the plan
 * @param recertified days of later signatures
 * @param planEnds last day for which the plan was made
 * @param reports days on which progress reports were written
 */
public record PaperTrail(
        List<LocalDate> treatmentDays,
        boolean orderInRecord,
        Optional<LocalDate> planSent,
        Optional<LocalDate> certified,
        List<LocalDate> recertified,
        Optional<LocalDate> planEnds,
        List<LocalDate> reports) {
    public PaperTrail {
        treatmentDays = treatmentDays.stream().distinct().sorted().toList();
        recertified = recertified.stream().sorted().toList();
        reports = reports.stream().sorted().toList();
        if (treatmentDays.isEmpty()) {
            throw new IllegalArgumentException("deadlines count from the first treatment day, and there is none");
        }
    }

    /** The first treatment day; the evaluation counts. */
    LocalDate first() {
        return treatmentDays.get(0);
    }
}
