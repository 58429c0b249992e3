package slipway.reasoning.deadlines;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;

/**
 * What a payer asks for, for care that began within some dates.
 *
 * @param validTo first day on which it no longer holds; empty if it still does
 * @param certificationDays days after the first treatment day by which the plan is certified
 * @param sendingIsEnough whether proof of sending meets the first certification, given an order in the record
 * @param recertificationDays days after the first treatment day, or after the last certification
 * @param progressTreatmentDays a report is due at least once in so many treatment days
 */
public record PaperRule(
        String payer,
        LocalDate validFrom,
        Optional<LocalDate> validTo,
        OptionalInt certificationDays,
        boolean sendingIsEnough,
        OptionalInt recertificationDays,
        OptionalInt progressTreatmentDays,
        Basis basis) {
    private static final List<PaperRule> BUNDLED =
            ReasoningData.table("paper-rules.csv").stream().map(PaperRule::read).toList();

    public PaperRule {
        for (OptionalInt days : List.of(certificationDays, recertificationDays, progressTreatmentDays)) {
            if (days.isPresent() && days.getAsInt() < 1) {
                throw new IllegalArgumentException("a term must be at least 1 day, was " + days.getAsInt());
            }
        }
    }

    /** Where a rule comes from. */
    public record Basis(String mark, String source) {}

    /** The rules that ship with the program. */
    public static List<PaperRule> bundled() {
        return BUNDLED;
    }

    /** The rule of a payer for care that began on a day. */
    public static Optional<PaperRule> find(String payer, LocalDate firstTreatmentDay) {
        return BUNDLED.stream()
                .filter(rule -> rule.payer.equals(payer) && rule.holds(firstTreatmentDay))
                .findFirst();
    }

    private boolean holds(LocalDate day) {
        return !day.isBefore(validFrom) && validTo.map(day::isBefore).orElse(true);
    }

    private static PaperRule read(CSVRecord row) {
        return new PaperRule(
                row.get("payer"),
                LocalDate.parse(row.get("validFrom")),
                Optional.of(row.get("validTo")).filter(text -> !text.isEmpty()).map(LocalDate::parse),
                days(row, "certificationDays"),
                "sent".equals(row.get("certification")),
                days(row, "recertificationDays"),
                days(row, "progressTreatmentDays"),
                new Basis(row.get("mark"), row.get("source")));
    }

    private static OptionalInt days(CSVRecord row, String column) {
        String text = row.get(column);
        return text.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text));
    }
}
