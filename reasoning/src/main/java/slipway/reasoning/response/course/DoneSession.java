package slipway.reasoning.response.course;

import slipway.reasoning.response.checkin.Session;

/**
 * A reported session with the dose that was in force when it started.
 *
 * @param rung of the ladder
 */
public record DoneSession(Session session, int rung) {
    /** Whether symptoms rose by 1 point at most and settled in time; what was not told is not good. */
    boolean good(double mostRise, double mostMinutes) {
        return session.rise() <= mostRise && session.settleMinutes() <= mostMinutes;
    }
}
