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
    public CodeEntry {
        if (validTo.filter(end -> !end.isAfter(validFrom)).isPresent()) {
            throw new IllegalArgumentException(
                    "%s must end after %s, ends %s".formatted(code, validFrom, validTo.get()));
        }
    }

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

    /** Whether it is a code on a day, to be billed or not. */
    boolean isOn(LocalDate service) {
        return !service.isBefore(validFrom) && !expired(service);
    }

    boolean holds(LocalDate service) {
        return billable && isOn(service);
    }

    /** Whether both are lines of the same code for some same day. */
    public boolean overlaps(CodeEntry that) {
        return code.equals(that.code) && !expired(that.validFrom) && !that.expired(validFrom);
    }

    /** Whether it says the same of a code, wherever it was found. */
    boolean saysSameAs(CodeEntry that) {
        return billable == that.billable
                && side == that.side
                && validTo.equals(that.validTo)
                && words.equals(that.words);
    }

    /** Whether it ends earlier, which one without an end never does. */
    boolean endsBefore(CodeEntry that) {
        return validTo.isPresent() && (that.validTo.isEmpty() || validTo.get().isBefore(that.validTo.get()));
    }
}
