package slipway.store.faults;

import java.util.Random;

/** What is going on when the kill comes. */
enum KillTask {
    /** Four patients who send check-ins. */
    CHECK_INS,
    /** Two therapists who save plans and sections. */
    SAVES,
    /** The way from the first version of the tables. */
    MIGRATION;

    private static final int TENTHS = 10;

    static KillTask random(Random random) {
        int tenth = random.nextInt(TENTHS);
        if (tenth < 5) {
            return CHECK_INS;
        }
        return tenth < 8 ? SAVES : MIGRATION;
    }
}
