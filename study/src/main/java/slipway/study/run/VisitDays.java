package slipway.study.run;

import slipway.study.data.Settings;

/** On which days visits are: the first day, weekly at first, later more seldom. */
final class VisitDays {
    private static final Settings CARE = Settings.load("care.csv");
    private static final int EARLY = CARE.count("visit-every-early");
    private static final int UNTIL = CARE.count("visit-early-until");
    private static final int LATE = CARE.count("visit-every-late");

    private VisitDays() {}

    static boolean is(int day) {
        return day <= UNTIL ? day % EARLY == 0 : (day - UNTIL) % LATE == 0;
    }
}
