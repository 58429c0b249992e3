package slipway.study.policy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import slipway.reasoning.dose.DoseLadder;
import slipway.reasoning.response.checkin.Session;
import slipway.reasoning.response.course.DoneSession;
import slipway.reasoning.response.course.Flare;
import slipway.reasoning.response.course.Ruled;
import slipway.reasoning.response.course.RungChange;
import slipway.reasoning.response.estimate.Stress;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.ladder.Ladder;
import slipway.reasoning.response.propose.VisitDose;
import slipway.reasoning.response.rules.Contact;
import slipway.reasoning.response.rules.Decision;
import slipway.study.data.Settings;
import slipway.study.load.LoadProfile;
import slipway.study.person.Told;

/**
 * One person under the program's rules of response and estimate, the same code that answers real reports. The therapist
 * tries a range in the room at each visit and sets the ceiling of repetitions and sessions; the program moves below it.
 */
final class ResponseCourse implements Course {
    private static final int PAUSE_DAYS = Settings.load("care.csv").count("pause-days");
    private static final double SECONDS_PER_DIRECTION = 3;
    private static final int FIRST_VISIT = 0;
    /** The rules look back no further than a break that needs a review. */
    private static final int REMEMBERED_DAYS = 15;

    private final LoadProfile loads;
    private final Intake intake;
    private final StartDose start;
    private final Mode mode;
    private final Optional<Estimate> estimate;
    private RangeTried range;
    private HomeDose given;
    private slipway.reasoning.response.course.Course course;
    private boolean locked;
    private boolean flaredSinceVisit;
    private int pausedUntil;
    private Optional<Session> last = Optional.empty();
    private double lastLogStress;
    private int toldDay = -1;
    private int toldNumber;

    ResponseCourse(Intake intake, Mode mode) {
        this.intake = intake;
        this.mode = mode;
        loads = intake.loads();
        start = StartDose.of(intake.irritability());
        estimate = mode.estimate() ? Optional.of(new Estimate(intake)) : Optional.empty();
        range = new RangeTried(loads, 0);
        given = new HomeDose(start.repetitionsLow(), 1, start.sessionsLow(), 1, SECONDS_PER_DIRECTION);
        course = follow(FIRST_VISIT);
    }

    private slipway.reasoning.response.course.Course follow(int day) {
        int more = DoseLadder.repetitions().stream()
                .filter(step -> step > given.repetitions())
                .findFirst()
                .orElse(given.repetitions());
        var ceiling = new Ceiling(
                Math.max(more, start.repetitionsHigh()), Math.max(given.sessionsPerDay(), start.sessionsHigh()), 1);
        var next = slipway.reasoning.response.course.Course.start(
                Ladder.through(given, ceiling), false, ToldSession.minute(day, 0));
        for (DoneSession done : day == FIRST_VISIT ? List.<DoneSession>of() : course.sessions()) {
            if (done.session().day() >= day - REMEMBERED_DAYS) {
                next = next.with(done.session());
            }
        }
        return next;
    }

    @Override
    public Asked today(int day) {
        HomeDose dose = course.dose();
        var asked = new Asked(range.rungOf(dose.rangeFraction()), dose.repetitions(), dose.sessionsPerDay());
        boolean waits = course.paused() && day < pausedUntil;
        return locked || course.stopped() || waits ? asked.rest() : asked;
    }

    @Override
    public void visit(int day, double onsetRaiseDeg, Room room) {
        boolean first = day == FIRST_VISIT;
        if (!first) {
            estimate.ifPresent(known -> known.onset(day, onsetRaiseDeg));
        }
        HomeDose now = course.dose();
        int aim = FirstRange.shortOfSymptoms(loads, onsetRaiseDeg, intake.irritability());
        if (flaredSinceVisit && !first) {
            aim = Math.max(0, Math.min(aim, range.rung() - 1));
        }
        // The range is what was tried in the room; the estimate has its say on how often that is done at home.
        int rung = FirstRange.tried(aim, now.repetitions(), room);
        range = new RangeTried(loads, rung);
        if (!first) {
            given = VisitDose.next(
                    given, now, flaredSinceVisit, start.sessionsHigh(), dose -> excess(rung, dose) <= mode.limit());
        }
        course = follow(day);
        flaredSinceVisit = false;
    }

    private double excess(int rung, HomeDose dose) {
        return estimate.map(known -> known.excess(loads.rungPct()[rung], dose)).orElse(0.0);
    }

    private boolean overLimit(HomeDose dose) {
        return excess(range.rungOf(dose.rangeFraction()), dose) > mode.limit();
    }

    @Override
    public Answer heard(Told told) {
        morning(told);
        toldNumber = told.day() == toldDay ? toldNumber + 1 : 0;
        toldDay = told.day();
        Session session = ToldSession.of(told, told.day() + "-" + toldNumber, toldNumber);
        flaredSinceVisit |= Flare.reported(session);
        course = course.with(session);
        if (session.rest()) {
            estimate.ifPresent(known -> known.rest(told.worseMorning()));
            backToUsual(told);
        } else {
            observe(session);
        }
        return rule(session, ToldSession.minute(told.day(), toldNumber));
    }

    private void observe(Session session) {
        HomeDose dose =
                course.dose(course.sessions().get(course.indexOf(session.id())).rung());
        lastLogStress = Stress.log(range.peakPct(dose), dose);
        last = Optional.of(session);
        estimate.ifPresent(known -> known.session(
                (double) session.day(),
                lastLogStress,
                session.before(),
                session.rise(),
                session.settleMinutes(),
                Session.NOT_TOLD));
    }

    /** The morning belongs to the session of the day before, and is one more report on it. */
    private void morning(Told told) {
        Optional<Session> yesterday = last.filter(session -> session.day() == told.day() - 1 && told.day() != toldDay);
        if (yesterday.isEmpty()) {
            return;
        }
        Session report = ToldSession.morning(yesterday.get(), told.worseMorning());
        flaredSinceVisit |= told.worseMorning();
        estimate.ifPresent(known -> known.session(
                told.day(),
                lastLogStress,
                yesterday.get().before(),
                Session.NOT_TOLD,
                Session.NOT_TOLD,
                report.morning()));
        if (course.sessions().stream().anyMatch(done -> done.session().id().equals(report.id()))) {
            course = course.with(report);
            rule(report, ToldSession.minute(told.day(), 0));
        }
    }

    /** Who waits until back to usual and tells that it is so goes on. */
    private void backToUsual(Told told) {
        boolean usual =
                last.filter(session -> told.before() <= session.before()).isPresent();
        if (course.paused() && usual) {
            pausedUntil = told.day() + 1;
        }
    }

    private Answer rule(Session session, long minute) {
        Ruled ruled = Ruled.on(course, session.id(), minute, locked);
        if (estimate.isPresent() && !locked) {
            ruled = ruled.withEstimate(overLimit(course.dose()), nextOverLimit());
        }
        boolean wasPaused = course.paused();
        course = mode.stepRules() ? ruled.moveTo(ruled.mostRung()) : freely(ruled);
        if (course.paused() && !wasPaused) {
            pausedUntil = (int) session.day() + PAUSE_DAYS;
        }
        Contact contact = ruled.ruling().asks().contact();
        locked |= contact.compareTo(Contact.SAME_DAY) >= 0;
        return switch (contact) {
            case EMERGENCY_NUMBER -> Answer.EMERGENCY;
            case SAME_DAY -> Answer.CONTACT;
            case NONE, ASK_THERAPIST, CALL -> Answer.NONE;
        };
    }

    private boolean nextOverLimit() {
        Ladder ladder = course.ladder();
        int next = course.rung() + 1;
        return next <= ladder.top() && overLimit(course.dose(next));
    }

    /** Without the rules that limit steps: the highest rung that the estimate allows, unless a rule eases or stops. */
    private slipway.reasoning.response.course.Course freely(Ruled ruled) {
        var moved = ruled.moveTo(ruled.mostRung());
        Decision decision = ruled.ruling().decision();
        if (decision.eases()) {
            return moved;
        }
        int rung = moved.ladder().top();
        while (rung > 0 && overLimit(moved.dose(rung))) {
            rung--;
        }
        var changes = new ArrayList<>(moved.changes());
        if (rung != moved.rung()) {
            changes.add(new RungChange(ruled.nowMinute(), rung, rung > moved.rung()));
        }
        return new slipway.reasoning.response.course.Course(
                moved.ladder(),
                moved.companion(),
                moved.sessions(),
                changes,
                moved.slow(),
                moved.paused(),
                moved.noStepUntilMinute(),
                moved.failures(),
                moved.stopped(),
                OptionalLong.empty());
    }

    @Override
    public void released(int day) {
        locked = false;
        course = course.released();
    }
}
