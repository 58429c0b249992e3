package slipway.reasoning.response.course;

import slipway.reasoning.response.checkin.Session;

/** What is called a flare. */
public final class Flare {
    /** Smallest rise that is one, points of 10. */
    public static final double RISE = CourseData.FLARE_RISE;
    /** A settle time beyond this is one, minutes. */
    public static final double SETTLE_MINUTES = CourseData.FLARE_SETTLE_MINUTES;

    private Flare() {}

    /** Whether a session was a flare as reported; what was not told is none. */
    public static boolean reported(Session session) {
        return session.rise() >= RISE || session.settleMinutes() > SETTLE_MINUTES || session.morning() == 1;
    }
}
