package slipway.study.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.study.data.Settings;
import slipway.study.person.Felt;
import slipway.study.person.Hidden;
import slipway.study.person.SimulatedPerson;
import slipway.study.person.Told;
import slipway.study.policy.Asked;
import slipway.study.policy.Course;
import slipway.study.policy.Policy;

/** One person under one way of dosing, day by day. */
final class Episode {
    private static final Settings CARE = Settings.load("care.csv");
    private static final double ONSET_ERROR_DEG = CARE.value("onset-error");
    private static final double TRIAL_RISE = CARE.value("trial-rise");
    private static final double TRIAL_SETTLE_MINUTES = CARE.value("trial-settle");
    private static final double GOAL_RAISE_DEG = Settings.load("load.csv").value("goal-raise");
    private static final double PER_MILLE = 1000;

    private final Policy policy;
    private final SimulatedPerson person;
    private final int days;
    private final Outcome outcome = new Outcome();
    private final SafetyDesk desk;
    private final List<Told> unread = new ArrayList<>();
    private final Course course;

    private Episode(Policy policy, Hidden hidden, int days) {
        this.policy = policy;
        this.days = days;
        person = new SimulatedPerson(hidden, days);
        person.startDay(0);
        double onsetDeg = person.measuredOnsetDeg(ONSET_ERROR_DEG);
        course = policy.admit(Admission.of(person, onsetDeg));
        desk = new SafetyDesk(person, outcome);
        outcome.set(Measure.DAYS_TO_FULL_RANGE, days);
        outcome.set(Measure.DAYS_TO_GOAL, days);
    }

    /** What comes of it. */
    static Outcome run(Policy policy, Hidden hidden, int days) {
        var episode = new Episode(policy, hidden, days);
        for (int day = 0; day < days; day++) {
            episode.day(day);
        }
        return episode.finish();
    }

    private void day(int day) {
        if (day > 0) {
            person.startDay(day);
        }
        desk.count(day);
        if (desk.releases(day)) {
            course.released(day);
        }
        if (VisitDays.is(day) && !desk.away()) {
            visit(day);
        }
        Asked asked =
                desk.mayExercise(day) ? course.today(day) : course.today(day).rest();
        if (asked.sessions() == 0) {
            outcome.add(Measure.REST_DAYS, 1);
            person.tellRest().ifPresent(told -> arrives(day, told));
        } else {
            sessions(day, asked);
        }
        desk.phone(day);
        outcome.add(Measure.FLARE_DAYS, person.flaredToday() ? 1 : 0);
        person.endDay();
        if (outcome.get(Measure.DAYS_TO_GOAL) == days && person.reaches(GOAL_RAISE_DEG)) {
            outcome.set(Measure.DAYS_TO_GOAL, day);
        }
    }

    private void visit(int day) {
        unread.forEach(told -> desk.answer(day, told, course.heard(told)));
        unread.clear();
        desk.ask(day);
        if (desk.mayExercise(day)) {
            course.visit(day, person.measuredOnsetDeg(ONSET_ERROR_DEG), this::tried);
        }
    }

    private boolean tried(int rung, int repetitions) {
        Felt felt = person.tryInRoom(rung, repetitions);
        return felt.rise() < TRIAL_RISE && felt.settleMinutes() <= TRIAL_SETTLE_MINUTES;
    }

    private void sessions(int day, Asked asked) {
        for (int index = 0; index < asked.sessions() && desk.mayExercise(day); index++) {
            if (!person.does(index)) {
                person.claim(index, asked.repetitions()).ifPresent(told -> arrives(day, told));
                continue;
            }
            Felt felt = person.session(index, asked.rung(), asked.repetitions());
            count(day, asked, felt);
            Optional<Told> told = person.tell(index, asked.repetitions(), felt);
            told.ifPresent(report -> arrives(day, report));
            if (felt.flare()) {
                return;
            }
        }
    }

    private void count(int day, Asked asked, Felt felt) {
        var loads = person.hidden().loads();
        double share = loads.rungPct()[asked.rung()] / person.hidden().fullTolerancePct();
        outcome.add(Measure.SESSIONS, 1);
        outcome.add(Measure.REPETITIONS, asked.repetitions());
        outcome.add(Measure.DOSE_PER_MILLE, Math.round(PER_MILLE * share * asked.repetitions()));
        outcome.add(Measure.FLARED_SESSIONS, felt.flare() ? 1 : 0);
        boolean full = asked.rung() == loads.rungs() - 1 && felt.good();
        if (full && outcome.get(Measure.FULL_RANGE) == 0) {
            outcome.set(Measure.FULL_RANGE, 1);
            outcome.set(Measure.DAYS_TO_FULL_RANGE, day);
        }
    }

    private void arrives(int day, Told told) {
        desk.told(told);
        if (policy.readsDaily()) {
            desk.answer(day, told, course.heard(told));
        } else {
            unread.add(told);
        }
    }

    private Outcome finish() {
        // The last visit, after the last day: reports that nobody has read yet are read now.
        unread.forEach(told -> desk.answer(days, told, course.heard(told)));
        desk.ask(days);
        outcome.set(Measure.GOAL, person.reaches(GOAL_RAISE_DEG) ? 1 : 0);
        return outcome;
    }
}
