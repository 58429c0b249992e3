package slipway.care.record.person;

import java.time.LocalDate;
import java.time.Period;

/** How old somebody is: from the date of birth, or as it was told on some day. */
public sealed interface Age {
    /** From the date of birth. */
    record Born(LocalDate on) implements Age {}

    /**
     * As told.
     *
     * @param years age in years on that day, 0 to 130
     * @param on the day it was told
     */
    record Told(double years, LocalDate on) implements Age {
        public Told {
            if (!(years >= 0 && years <= 130)) {
                throw new IllegalArgumentException("age must be within 0 and 130 years, was " + years);
            }
        }
    }

    /** Age in years on a day; a told age grows by the whole years since. */
    default double yearsOn(LocalDate day) {
        if (this instanceof Born born) {
            return Period.between(born.on(), day).getYears();
        }
        Told told = (Told) this;
        return told.years() + Math.max(0, Period.between(told.on(), day).getYears());
    }
}
