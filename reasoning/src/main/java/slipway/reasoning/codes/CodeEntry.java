package slipway.reasoning.codes;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One line of the code list.
 *
 * @param billable whether it may stand on a claim, or only names a family
 * @param validTo first day of service for which it no longer holds; empty if it still does
 * @param words this program's own words, not the official description
 */
public record CodeEntry(
        String code,
        boolean billable,
        CodeSide side,
        LocalDate validFrom,
        Optional<LocalDate> validTo,
        String words,
        String mark,
        String source) {

    /** Which side a code names. */
    public enum CodeSide {
        NONE,
        UNSPECIFIED,
        RIGHT,
        LEFT,
        BILATERAL
    }

    boolean expired(LocalDate service) {
        return validTo.filter(end -> !service.isBefore(end)).isPresent();
    }

    boolean holds(LocalDate service) {
        return billable && !service.isBefore(validFrom) && !expired(service);
    }
}
