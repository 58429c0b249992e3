package slipway.reasoning.response.propose;

import java.util.Map;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.estimate.EstimateSettings;
import slipway.reasoning.response.estimate.Particles;
import slipway.reasoning.response.estimate.WeekAhead;
import slipway.reasoning.response.ladder.Ladder;
import slipway.reasoning.tolerance.Interval;

/** The week ahead for each rung of one exercise, with the other exercises at their doses in force. */
final class Outlook {
    private final Particles particles;
    private final FollowedPlan plan;
    private final Map<String, Course> courses;
    private final FollowedExercise exercise;
    private final double restFlare;
    private final int rung;

    private Outlook(
            Tracker tracker, FollowedPlan plan, Map<String, Course> courses, FollowedExercise exercise, int rung) {
        this.particles = tracker.particles();
        this.plan = plan;
        this.courses = Map.copyOf(courses);
        this.exercise = exercise;
        this.restFlare = tracker.restFlare();
        this.rung = rung;
    }

    static Outlook of(
            Tracker tracker, FollowedPlan plan, Map<String, Course> courses, FollowedExercise exercise, Course course) {
        return new Outlook(tracker, plan, courses, exercise, course.rung());
    }

    /** Mean excess chance with this exercise on a rung. */
    double excess(int onRung) {
        return week(onRung).excess(particles, restFlare);
    }

    /** Mean chance of at least one flare in the week, rest included. */
    double chance(int onRung) {
        double rest = 1 - Math.pow(1 - restFlare, WeekAhead.DAYS);
        return Math.min(1, rest + excess(onRung));
    }

    Interval interval(int onRung) {
        return week(onRung).interval(particles, restFlare);
    }

    boolean overLimit() {
        return excess(rung) > EstimateSettings.LIMIT;
    }

    boolean nextOverLimit() {
        return rung < exercise.ladder().top() && excess(rung + 1) > EstimateSettings.LIMIT;
    }

    double effective() {
        return particles.effective();
    }

    private WeekAhead week(int onRung) {
        var week = new WeekAhead(particles.size());
        week.clear();
        for (FollowedExercise other : plan.exercises()) {
            Course course = courses.get(other.id());
            boolean own = other.id().equals(exercise.id());
            if (!other.peakLoad().isEmpty() && (own || course == null || !course.stopped())) {
                int at = own ? onRung : course == null ? other.ladder().start() : course.rung();
                Ladder ladder = other.ladder();
                week.add(
                        particles, Tracker.logStress(other, at), ladder.dose(at).sessionsPerDay());
            }
        }
        return week;
    }
}
