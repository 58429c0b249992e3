package slipway.study.policy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import slipway.reasoning.irritability.Irritability;
import slipway.study.load.LoadTable;
import slipway.study.load.LoadTables;
import slipway.study.person.Event;
import slipway.study.person.Told;

class ResponseCourseTest {
    private static final LoadTable TABLE = LoadTables.compute();
    private static final Intake INTAKE = new Intake(TABLE.seen(1, 2), 55, Irritability.MODERATE, 4, 1);
    private static final Room ALL_WELL = (rung, repetitions) -> true;

    private static Course started() {
        Course course = new ResponseCourse(INTAKE, new Mode(true, true, 0.2));
        course.visit(0, INTAKE.onsetRaiseDeg(), ALL_WELL);
        return course;
    }

    private static Told told(int day, Asked asked, int rise, int settleMinutes, Set<Event> events) {
        return new Told(
                day, asked.repetitions(), asked.repetitions(), 2, 2 + rise, settleMinutes, false, false, events);
    }

    @Test
    void everySignOfDangerIsAnsweredAndLocksUntilReleased() {
        for (Event event : Event.values()) {
            Course course = started();
            Answer answer = course.heard(told(1, course.today(1), 0, 0, Set.of(event)));
            assertThat(answer).isEqualTo(event == Event.EMERGENCY ? Answer.EMERGENCY : Answer.CONTACT);
            assertThat(course.today(2).sessions()).isZero();
            course.heard(told(2, new Asked(0, 5, 1), 0, 0, Set.of()));
            assertThat(course.today(3).sessions()).isZero();
            course.released(3);
            assertThat(course.today(4).sessions()).isPositive();
        }
    }

    @Test
    void aFlareLowersTheDoseAtOnce() {
        Course course = started();
        Asked before = course.today(1);
        course.heard(told(1, before, 5, 30, Set.of()));
        assertThat(course.today(2).sessions()).isZero();
        Asked after = course.today(10);
        assertThat(after.rung()).isLessThan(before.rung());
        assertThat(after.repetitions()).isLessThanOrEqualTo(before.repetitions());
    }

    @Test
    void goodSessionsRaiseTheDoseBetweenVisitsButNeverTheRange() {
        Course course = started();
        Asked before = course.today(0);
        for (int day = 0; day < 7; day++) {
            course.heard(told(day, course.today(day), 0, 0, Set.of()));
        }
        Asked after = course.today(7);
        assertThat(after.repetitions()).isGreaterThan(before.repetitions());
        assertThat(after.rung()).isLessThanOrEqualTo(before.rung());
    }

    @Test
    void whatDoesNotGoWellInTheRoomIsNotSentHome() {
        Course well = started();
        Course badly = new ResponseCourse(INTAKE, new Mode(false, true, 0.2));
        badly.visit(0, INTAKE.onsetRaiseDeg(), (rung, repetitions) -> false);
        assertThat(badly.today(0).rung())
                .isLessThanOrEqualTo(Math.max(0, well.today(0).rung()));
        Course comparator = new ChangeAtVisits().admit(INTAKE);
        comparator.visit(0, INTAKE.onsetRaiseDeg(), ALL_WELL);
        Course refused = new ChangeAtVisits().admit(INTAKE);
        refused.visit(0, INTAKE.onsetRaiseDeg(), (rung, repetitions) -> false);
        assertThat(refused.today(0).rung()).isLessThan(comparator.today(0).rung());
    }

    @Test
    void allWaysStartWithTheSameRangeShortOfSymptoms() {
        int aim = FirstRange.shortOfSymptoms(INTAKE.loads(), INTAKE.onsetRaiseDeg(), INTAKE.irritability());
        assertThat(INTAKE.loads().rungPct()[aim]).isLessThanOrEqualTo(0.8 * INTAKE.onsetLoadPct());
        for (Policy policy : Policies.list()) {
            Course course = policy.admit(INTAKE);
            course.visit(0, INTAKE.onsetRaiseDeg(), ALL_WELL);
            assertThat(course.today(0).rung()).as(policy.id()).isLessThanOrEqualTo(aim);
        }
    }
}
