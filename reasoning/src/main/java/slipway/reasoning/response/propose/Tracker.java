package slipway.reasoning.response.propose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slipway.reasoning.response.checkin.Session;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.course.DoneSession;
import slipway.reasoning.response.estimate.EstimateSettings;
import slipway.reasoning.response.estimate.FilterModel;
import slipway.reasoning.response.estimate.FilterState;
import slipway.reasoning.response.estimate.Particles;
import slipway.reasoning.response.estimate.Prior;
import slipway.reasoning.response.estimate.Stress;

/**
 * The estimate of one person through all sessions of all exercises in the order in which they began. A session that
 * comes late, or a second report on one, is put in its place and what followed is followed again.
 */
final class Tracker {
    private final Particles particles;
    private final FilterState start;
    private final List<Entry> entries = new ArrayList<>();
    /** The particles after each entry. */
    private final List<FilterState> after = new ArrayList<>();

    private static final Comparator<Entry> BY_START = Comparator.comparingLong(
                    (Entry entry) -> entry.done.session().startMinute())
            .thenComparing(entry -> entry.done.session().id())
            .thenComparing(entry -> entry.exercise);

    private record Entry(String exercise, DoneSession done, double logStress) {}

    Tracker(Prior prior, long seed) {
        particles = Particles.of(FilterModel.bundled(), prior, EstimateSettings.PARTICLES, seed);
        start = particles.state();
    }

    Particles particles() {
        return particles;
    }

    /** Takes in a session of a course, or what is newly known of it. */
    void take(FollowedExercise exercise, Course course, String sessionId) {
        DoneSession done = course.sessions().get(course.indexOf(sessionId));
        double logStress = logStress(exercise, done.rung());
        int from = entries.size();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry known = entries.get(i);
            if (known.exercise.equals(exercise.id())
                    && known.done.session().id().equals(sessionId)) {
                entries.remove(i);
                from = i;
                // Its dose may have been set anew since; what was done then was done then.
                logStress = known.logStress;
                break;
            }
        }
        var entry = new Entry(exercise.id(), done, logStress);
        int place = entries.size();
        while (place > 0 && BY_START.compare(entries.get(place - 1), entry) > 0) {
            place--;
        }
        entries.add(place, entry);
        followFrom(Math.min(from, place));
    }

    static double logStress(FollowedExercise exercise, int rung) {
        return Stress.log(exercise.peakLoad().get(rung), exercise.ladder().dose(rung));
    }

    private void followFrom(int index) {
        while (after.size() > index) {
            after.remove(after.size() - 1);
        }
        Particles at = particles;
        at.setTo(index == 0 ? start : after.get(index - 1));
        for (int i = index; i < entries.size(); i++) {
            step(at, i);
            after.add(at.state());
        }
    }

    private void step(Particles at, int index) {
        Session session = entries.get(index).done.session();
        double days = index == 0 ? 0 : days(entries.get(index - 1).done.session(), session);
        at.advance(days);
        if (!session.rest()) {
            at.observe(
                    entries.get(index).logStress,
                    session.before(),
                    session.rise(),
                    session.settleMinutes(),
                    session.morning(),
                    EstimateSettings.REST_FLARE);
            at.refresh();
        }
    }

    private static double days(Session from, Session to) {
        return (to.startMinute() - from.startMinute()) / (24.0 * 60);
    }

    /** Chance of a flare on a day of rest. */
    double restFlare() {
        return RestFlares.chance(
                entries.stream().map(entry -> entry.done.session()).toList());
    }

    Optional<FilterState> state() {
        return Optional.of(particles.state());
    }
}
