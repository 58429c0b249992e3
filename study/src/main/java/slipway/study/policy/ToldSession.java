package slipway.study.policy;

import slipway.reasoning.response.checkin.EmergencyAnswer;
import slipway.reasoning.response.checkin.Reach;
import slipway.reasoning.response.checkin.Session;
import slipway.study.person.Event;
import slipway.study.person.Told;

/** What simulated people tell, as the program takes it in. */
final class ToldSession {
    static final long MINUTES_PER_DAY = 24 * 60;
    private static final long FIRST_MINUTE = 8 * 60;
    private static final long BETWEEN_MINUTES = 4 * 60;

    private ToldSession() {}

    /** When the session of this number of its day begins. */
    static long minute(int day, int number) {
        return day * MINUTES_PER_DAY + FIRST_MINUTE + number * BETWEEN_MINUTES;
    }

    static Session of(Told told, String id, int number) {
        boolean rest = told.repetitions() == 0;
        return new Session(
                id,
                minute(told.day(), number),
                told.day(),
                told.before(),
                rest ? Session.NOT_TOLD : told.worst(),
                told.repetitions(),
                rest ? Session.NOT_TOLD : told.settleMinutes(),
                Session.NOT_TOLD,
                (told.furtherDown() ? Reach.FOOT : Reach.CALF).ordinal(),
                false,
                told.events().contains(Event.NUMBNESS),
                told.events().contains(Event.WEAKNESS),
                told.events().contains(Event.EMERGENCY) ? EmergencyAnswer.YES : EmergencyAnswer.NO);
    }

    /** The next morning of a session that was told before. */
    static Session morning(Session session, boolean worse) {
        double none = Session.NOT_TOLD;
        return new Session(
                session.id(),
                session.startMinute(),
                session.day(),
                none,
                none,
                none,
                none,
                worse ? 1 : 0,
                none,
                false,
                false,
                false,
                EmergencyAnswer.NO);
    }
}
