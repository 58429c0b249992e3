package slipway.web.patient;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import slipway.care.record.person.Age;

/**
 * The year of birth, asked beside a code that lies around on paper for weeks. Wrong years lock the code for a while,
 * longer each time: of the hundred years that there are, a finder tries a handful in a day.
 */
final class BirthYear {
    private static final int FREE = 5;
    private static final Duration FIRST_PAUSE = Duration.ofMinutes(15);
    private static final Duration LONGEST_PAUSE = Duration.ofHours(24);
    private static final int MOST_DOUBLINGS = 7;

    private BirthYear() {}

    /** Whether a year is right; one of two if only an age was told. */
    static boolean fits(Age age, String year) {
        if (!year.strip().matches("[0-9]{4}")) {
            return false;
        }
        return years(age).contains(Integer.parseInt(year.strip()));
    }

    private static Set<Integer> years(Age age) {
        if (age instanceof Age.Born born) {
            return Set.of(born.on().getYear());
        }
        Age.Told told = (Age.Told) age;
        int youngest = told.on().getYear() - (int) told.years();
        return Set.of(youngest, youngest - 1);
    }

    /** Until when a code stays shut after so many wrong years in a row, the one of now included. */
    static Optional<Instant> lockedUntil(int failures, Instant now) {
        if (failures < FREE) {
            return Optional.empty();
        }
        Duration pause = FIRST_PAUSE.multipliedBy(1L << Math.min(failures - FREE, MOST_DOUBLINGS));
        return Optional.of(now.plus(pause.compareTo(LONGEST_PAUSE) > 0 ? LONGEST_PAUSE : pause));
    }
}
