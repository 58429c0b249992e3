package slipway.reasoning.response.course;

import slipway.reasoning.response.checkin.Session;
import slipway.reasoning.response.rules.Fact;
import slipway.reasoning.response.rules.Facts;

/** The facts of one session of a course, for the rules. */
final class History {
    private final Course course;
    private final int index;
    private final DoneSession done;
    private final Session session;

    History(Course course, int index) {
        this.course = course;
        this.index = index;
        this.done = course.sessions().get(index);
        this.session = done.session();
    }

    /**
     * Everything that the rules on a report ask for.
     *
     * @param nowMinute when the report came
     * @param locked whether an earlier report stopped everything
     */
    Facts facts(long nowMinute, boolean locked) {
        Facts facts = new Facts()
                .set(Fact.EMERGENCY, emergency())
                .set(Fact.LOCKED, locked || course.stopped())
                .set(Fact.NEW_WEAKNESS, session.newWeakness())
                .set(Fact.STILL_NUMB, session.stillNumb())
                .set(Fact.NEW_PAIN, session.newPain())
                .set(Fact.GAP_DAYS, course.companion() ? Session.NOT_TOLD : course.gapDays(session))
                .set(Fact.REST_DAY, session.rest())
                .set(Fact.COMPANION, course.companion())
                .set(Fact.PAUSED, course.paused());
        double usual = usualBefore();
        facts.set(Fact.PAIN_SHARE, usual > 0 ? session.before() / usual : Double.NaN)
                .set(Fact.ABOVE_USUAL, session.before() - usual);
        reach(facts);
        if (!session.rest() && !course.companion()) {
            reaction(facts);
        }
        if (!course.companion()) {
            step(facts, nowMinute);
        }
        return facts;
    }

    private double emergency() {
        return switch (session.emergency()) {
            case NO -> 0;
            case YES -> 1;
            case MISTAKE -> 2;
        };
    }

    private void reaction(Facts facts) {
        boolean told = !Double.isNaN(session.rise()) && !Double.isNaN(session.settleMinutes());
        facts.set(Fact.TOLD, told)
                .set(Fact.RISE, session.rise())
                .set(Fact.WORST, session.worst())
                .set(Fact.SETTLE_MINUTES, session.settleMinutes())
                .set(Fact.SLOW_IN_A_ROW, slowInARow())
                .set(Fact.WORSE_MORNING, session.morning())
                .set(Fact.WORSE_MORNINGS_7_DAYS, worseMornings());
    }

    private void reach(Facts facts) {
        for (int i = index - 1; i >= 0; i--) {
            double earlier = course.sessions().get(i).session().reach();
            if (!Double.isNaN(earlier)) {
                facts.set(Fact.FURTHER_DOWN, session.reach() > earlier).set(Fact.MOVED_UP, session.reach() < earlier);
                return;
            }
        }
    }

    private double usualBefore() {
        double sum = 0;
        int count = 0;
        for (int i = index - 1; i >= 0 && count < CourseData.USUAL_SESSIONS; i--) {
            double before = course.sessions().get(i).session().before();
            if (!Double.isNaN(before)) {
                sum += before;
                count++;
            }
        }
        return count == 0 ? Session.NOT_TOLD : sum / count;
    }

    /** A lower dose gets its own count. */
    private int slowInARow() {
        int count = 0;
        for (int i = index; i >= 0; i--) {
            DoneSession one = course.sessions().get(i);
            if (one.session().rest()) {
                continue;
            }
            if (one.rung() != done.rung() || !(one.session().settleMinutes() > CourseData.GOOD_SETTLE_MINUTES)) {
                break;
            }
            count++;
        }
        return count;
    }

    /** Days with a worse morning within a week of this session, itself included. */
    private int worseMornings() {
        int count = 0;
        long lastDay = Long.MIN_VALUE;
        for (DoneSession one : course.sessions()) {
            Session other = one.session();
            boolean near = Math.abs(other.day() - session.day()) < CourseData.WEEK_DAYS;
            if (near && !other.rest() && other.morning() == 1 && other.day() != lastDay) {
                count++;
                lastDay = other.day();
            }
        }
        return count;
    }

    private void step(Facts facts, long nowMinute) {
        int rung = course.rung();
        boolean below = rung < course.ladder().top();
        facts.set(Fact.BELOW_CEILING, below)
                .set(Fact.STEP_WAITS, nowMinute < course.noStepUntilMinute())
                .set(Fact.GOOD_OF_LAST_5, goodOfLast())
                .set(Fact.STEPS_7_DAYS, stepsInWeek(nowMinute));
        if (done.rung() == rung) {
            facts.set(
                            Fact.HOURS_AT_DOSE,
                            (session.startMinute() - course.current().minute()) / 60.0)
                    .set(Fact.MORNINGS_AT_DOSE, morningsAtDose());
        }
        if (below) {
            facts.set(Fact.BARRED, nowMinute < course.failureOf(rung + 1).barredUntilMinute())
                    .set(Fact.DAILY_RATIO, dailyRatio(nowMinute, rung + 1));
        }
    }

    private int goodOfLast() {
        int good = 0;
        int count = 0;
        for (int i = index; i >= 0 && count < CourseData.LAST_SESSIONS; i--) {
            DoneSession one = course.sessions().get(i);
            if (!one.session().rest()) {
                good += one.good(CourseData.GOOD_RISE, CourseData.GOOD_SETTLE_MINUTES) ? 1 : 0;
                count++;
            }
        }
        return good;
    }

    private int morningsAtDose() {
        int mornings = 0;
        for (int i = index; i >= 0; i--) {
            DoneSession one = course.sessions().get(i);
            if (one.session().startMinute() < course.current().minute()) {
                break;
            }
            mornings += one.session().morning() == 0 && !one.session().rest() ? 1 : 0;
        }
        return mornings;
    }

    private int stepsInWeek(long nowMinute) {
        int steps = 0;
        for (RungChange change : course.changes()) {
            steps += change.byStep() && change.minute() > weekBefore(nowMinute) ? 1 : 0;
        }
        return steps;
    }

    private double dailyRatio(long nowMinute, int next) {
        int least = course.ladder().dose(course.rungAt(weekBefore(nowMinute))).dailyRepetitions();
        for (RungChange change : course.changes()) {
            if (change.minute() > weekBefore(nowMinute)) {
                least = Math.min(least, course.ladder().dose(change.rung()).dailyRepetitions());
            }
        }
        return (double) course.ladder().dose(next).dailyRepetitions() / least;
    }

    private static long weekBefore(long nowMinute) {
        return nowMinute - CourseData.WEEK_DAYS * CourseData.MINUTES_PER_DAY;
    }
}
