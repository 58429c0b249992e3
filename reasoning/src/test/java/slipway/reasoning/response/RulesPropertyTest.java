package slipway.reasoning.response;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.reasoning.response.checkin.EmergencyAnswer;
import slipway.reasoning.response.checkin.Session;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.course.Ruled;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.ladder.Ladder;
import slipway.reasoning.response.rules.Contact;
import slipway.reasoning.response.rules.Decision;

/** Every report that can be made, on every rung and after several histories, gets one decision that keeps the promises. */
class RulesPropertyTest {
    private static final long DAY = 24 * 60;
    private static final double[] LEVELS = {Session.NOT_TOLD, 0, 1, 2, 3, 5, 8, 10};
    private static final double[] SETTLES = {Session.NOT_TOLD, 0, 2, 2.5, 10, 10.5, Double.POSITIVE_INFINITY};
    private static final double[] MORNINGS = {Session.NOT_TOLD, 0, 1};
    private static final double[] REACHES = {Session.NOT_TOLD, 2, 3, 6};
    private static final double[] REPETITIONS = {Session.NOT_TOLD, 0, 5};

    private final Ladder ladder = Ladder.through(new HomeDose(5, 1, 1, 1, 3), new Ceiling(8, 2, 1));

    @Test
    void everyReportGetsOneDecisionBelowTheCeilingWithSafetyFirst() {
        long count = 0;
        for (Course history : histories()) {
            for (Session report : reports(history.sessions().isEmpty() ? 0 : 30)) {
                for (int locked = 0; locked < 2; locked++) {
                    check(history, report, locked == 1);
                    count++;
                }
            }
        }
        assertThat(count).isGreaterThan(500_000);
    }

    private void check(Course history, Session report, boolean locked) {
        long now = report.startMinute() + 20;
        Ruled ruled = Ruled.on(history.with(report), report.id(), now, locked);
        Decision decision = ruled.ruling().decision();
        Course moved = ruled.moveTo(ruled.mostRung());
        boolean kept = ladder.ceiling().allows(moved.dose())
                && moved.rung() <= ladder.top()
                && (decision == Decision.STEP_UP ? moved.rung() == history.rung() + 1 : moved.rung() <= history.rung())
                && safetyFirst(report, decision, ruled.ruling().asks().contact(), locked)
                && !(report.rise() >= 2 && !report.rest() && !decision.eases())
                && !(decision == Decision.STEP_UP && Double.isNaN(report.settleMinutes()));
        if (!kept) {
            assertThat(kept)
                    .as(
                            "%s on rung %d: %s, then rung %d",
                            report, history.rung(), ruled.ruling().ids(), moved.rung())
                    .isTrue();
        }
    }

    private static boolean safetyFirst(Session report, Decision decision, Contact contact, boolean locked) {
        if (report.emergency() != EmergencyAnswer.NO) {
            return decision == Decision.EMERGENCY && contact == Contact.EMERGENCY_NUMBER;
        }
        if (report.newWeakness() || report.stillNumb()) {
            return decision == Decision.CONTACT_SAME_DAY && contact == Contact.SAME_DAY;
        }
        return !locked || decision == Decision.STAY_STOPPED;
    }

    /** None; all good on the lowest, the given and the top rung; two slow ones; a worse morning; a long break. */
    private List<Course> histories() {
        var histories = new ArrayList<Course>();
        Course start = Course.start(ladder, false, 0);
        histories.add(start);
        histories.add(after(
                start,
                session(0, 2, 2, 1, 0),
                session(1, 2, 2, 1, 0),
                session(2, 2, 2, 1, 0),
                session(29, 2, 3, 1, 0)));
        histories.add(after(start, session(28, 2, 2, 5, 0), session(29, 2, 2, 5, 0)));
        histories.add(after(start, session(28, 2, 2, 1, 1), session(29, 2, 2, 1, 0)));
        histories.add(after(start, session(10, 2, 2, 1, 0)));
        Course low = start;
        for (int day = 0; day < 10; day++) {
            low = after(low, session(day, 2, 4, 1, 0));
        }
        histories.add(low);
        Course top = start;
        for (int day = 0; day < 29; day++) {
            top = after(top, session(day, 2, 2, 1, 0));
        }
        histories.add(top);
        assertThat(top.rung()).isEqualTo(ladder.top());
        return histories;
    }

    private static Course after(Course start, Session... sessions) {
        Course course = start;
        for (Session session : sessions) {
            Ruled ruled = Ruled.on(course.with(session), session.id(), session.startMinute() + 20, false);
            course = ruled.moveTo(ruled.mostRung());
        }
        return course;
    }

    private static Session session(long day, double before, double worst, double settle, double morning) {
        return new Session(
                "s" + day,
                day * DAY,
                day,
                before,
                worst,
                5,
                settle,
                morning,
                3,
                false,
                false,
                false,
                EmergencyAnswer.NO);
    }

    private static List<Session> reports(long day) {
        var reports = new ArrayList<Session>();
        for (double before : LEVELS) {
            for (double worst : LEVELS) {
                for (double settle : SETTLES) {
                    for (double morning : MORNINGS) {
                        for (double reach : REACHES) {
                            for (double done : REPETITIONS) {
                                addFlags(reports, day, before, worst, done, settle, morning, reach);
                            }
                        }
                    }
                }
            }
        }
        return reports;
    }

    private static void addFlags(
            List<Session> reports,
            long day,
            double before,
            double worst,
            double done,
            double settle,
            double morning,
            double reach) {
        for (int flags = 0; flags < 5; flags++) {
            EmergencyAnswer emergency = flags == 4 ? EmergencyAnswer.MISTAKE : EmergencyAnswer.NO;
            reports.add(new Session(
                    "now",
                    day * DAY,
                    day,
                    before,
                    worst,
                    done,
                    settle,
                    morning,
                    reach,
                    flags == 1,
                    flags == 2,
                    flags == 3,
                    emergency));
        }
    }
}
