package slipway.reasoning.response.course;

import slipway.reasoning.basis.Coefficients;

/** The coefficients of {@code response/course.csv}. */
final class CourseData {
    static final long MINUTES_PER_DAY = 24 * 60;
    static final double GOOD_RISE;
    static final double GOOD_SETTLE_MINUTES;
    static final double FLARE_RISE;
    static final double FLARE_SETTLE_MINUTES;
    static final int LAST_SESSIONS;
    static final int USUAL_SESSIONS;
    static final int WEEK_DAYS;
    static final double HALF_RANGE;
    static final double SLOWER;
    static final double DIARY_SHARE;

    static {
        var data = Coefficients.load("response/course.csv");
        GOOD_RISE = data.value("good-rise");
        GOOD_SETTLE_MINUTES = data.value("good-settle");
        FLARE_RISE = data.value("flare-rise");
        FLARE_SETTLE_MINUTES = data.value("flare-settle");
        LAST_SESSIONS = (int) data.value("last-sessions");
        USUAL_SESSIONS = (int) data.value("usual-sessions");
        WEEK_DAYS = (int) data.value("week-days");
        HALF_RANGE = data.value("half-range");
        SLOWER = data.value("slower");
        DIARY_SHARE = data.value("diary-share");
    }

    private CourseData() {}
}
