package slipway.reasoning.response.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import slipway.reasoning.response.checkin.Session;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.ladder.Ladder;
import slipway.reasoning.response.rules.RuleBook;

/**
 * How one exercise went so far. Times are minutes since 1970 in UTC.
 *
 * @param companion whether it is no glide: then only the safety rules look at its reports
 * @param sessions in the order in which they started
 * @param changes doses that came into force, in their order; the first is the start
 * @param slow whether the movement is done slower, since a pause
 * @param paused whether the person waits until back to usual
 * @param noStepUntilMinute before this no step up
 * @param failures rungs that did not hold
 * @param stopped whether the exercise rests until the therapist has looked at it
 * @param blockedSinceMinute since when the rules allowed a step and the estimate did not; empty if it does not block
 */
public record Course(
        Ladder ladder,
        boolean companion,
        List<DoneSession> sessions,
        List<RungChange> changes,
        boolean slow,
        boolean paused,
        long noStepUntilMinute,
        List<Failure> failures,
        boolean stopped,
        OptionalLong blockedSinceMinute) {
    private static final Comparator<DoneSession> BY_START = Comparator.<DoneSession>comparingLong(
                    done -> done.session().startMinute())
            .thenComparing(done -> done.session().id());

    public Course {
        sessions = List.copyOf(sessions);
        changes = List.copyOf(changes);
        failures = List.copyOf(failures);
        if (changes.isEmpty()) {
            throw new IllegalArgumentException("a course needs a dose to start with");
        }
    }

    /** A course that starts with the given dose, or less if the ceiling is lower. */
    public static Course start(Ladder ladder, boolean companion, long minute) {
        var first = new RungChange(minute, ladder.start(), false);
        return new Course(
                ladder,
                companion,
                List.of(),
                List.of(first),
                false,
                false,
                minute,
                List.of(),
                false,
                OptionalLong.empty());
    }

    /**
     * Goes on from a dose that was set anew: what was reported counts on, as if at this dose; steps, pauses and failures
     * do not.
     *
     * @param minute since when
     */
    public Course anew(Ladder next, long minute) {
        var doses = new ArrayList<RungChange>();
        changes.stream()
                .filter(change -> change.minute() < minute)
                .forEach(change -> doses.add(new RungChange(change.minute(), next.start(), false)));
        doses.add(new RungChange(minute, next.start(), false));
        List<DoneSession> done = sessions.stream()
                .map(each -> new DoneSession(each.session(), next.start()))
                .toList();
        return new Course(next, companion, done, doses, false, false, minute, List.of(), false, OptionalLong.empty());
    }

    /** The change that is in force. */
    public RungChange current() {
        return changes.get(changes.size() - 1);
    }

    /** The rung in force. */
    public int rung() {
        return current().rung();
    }

    /** The dose in force. */
    public HomeDose dose() {
        return dose(rung());
    }

    /** The dose of a rung, slower if that was asked for. */
    public HomeDose dose(int rung) {
        HomeDose dose = ladder.dose(rung);
        return slow ? dose.slowerBy(CourseData.SLOWER) : dose;
    }

    /** The rung that was in force at a time; the first one before all changes. */
    public int rungAt(long minute) {
        int rung = changes.get(0).rung();
        for (int i = 1; i < changes.size() && changes.get(i).minute() <= minute; i++) {
            rung = changes.get(i).rung();
        }
        return rung;
    }

    /** With a session, or with one more report on a session that is there already. */
    public Course with(Session report) {
        var all = new ArrayList<>(sessions);
        for (int i = all.size() - 1; i >= 0; i--) {
            DoneSession known = all.get(i);
            if (known.session().id().equals(report.id())) {
                all.set(i, new DoneSession(known.session().with(report), known.rung()));
                all.sort(BY_START);
                return withSessions(all);
            }
        }
        var done = new DoneSession(report, resumedRung(rungAt(report.startMinute()), gapDays(report)));
        int place = all.size();
        while (place > 0 && BY_START.compare(all.get(place - 1), done) > 0) {
            place--;
        }
        all.add(place, done);
        return withSessions(all);
    }

    /** Released by a clinician. */
    public Course released() {
        return new Course(
                ladder,
                companion,
                sessions,
                changes,
                slow,
                paused,
                noStepUntilMinute,
                failures,
                false,
                blockedSinceMinute);
    }

    /** Days between a session and the one before it; 0 for the first. */
    double gapDays(Session session) {
        for (int i = sessions.size() - 1; i >= 0; i--) {
            Session earlier = sessions.get(i).session();
            boolean before = BY_START.compare(sessions.get(i), new DoneSession(session, 0)) < 0;
            if (before && !earlier.rest()) {
                return Math.max(0, session.day() - earlier.day());
            }
        }
        return 0;
    }

    /** The rung at which a person goes on after a break. */
    public static int resumedRung(int rung, double gapDays) {
        return Math.max(0, rung - RuleBook.bundled().onGap(gapDays).asks().resumeDown());
    }

    /** The place of a session. */
    public int indexOf(String sessionId) {
        for (int i = sessions.size() - 1; i >= 0; i--) {
            if (sessions.get(i).session().id().equals(sessionId)) {
                return i;
            }
        }
        throw new IllegalArgumentException("the course has no session " + sessionId);
    }

    private Course withSessions(List<DoneSession> all) {
        return new Course(
                ladder,
                companion,
                all,
                changes,
                slow,
                paused,
                noStepUntilMinute,
                failures,
                stopped,
                blockedSinceMinute);
    }

    /** The failure recorded for a rung; one of no times if it never failed. */
    public Failure failureOf(int rung) {
        for (Failure failure : failures) {
            if (failure.rung() == rung) {
                return failure;
            }
        }
        return new Failure(rung, 0, Long.MIN_VALUE);
    }
}
