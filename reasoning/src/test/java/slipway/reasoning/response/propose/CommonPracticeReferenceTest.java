package slipway.reasoning.response.propose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.reasoning.response.checkin.CheckIn;
import slipway.reasoning.response.checkin.EmergencyAnswer;
import slipway.reasoning.response.checkin.Morning;
import slipway.reasoning.response.course.Reported;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.rules.Contact;
import slipway.reasoning.response.rules.Decision;

/** What practice does, as scenarios by the rules alone. Common practice without a source unless one is named. */
class CommonPracticeReferenceTest {
    /** Common practice: symptoms that are mild and gone within two minutes are permitted. */
    @Test
    void settledWithinTwoMinutesMayGoOn() {
        assertThat(last(Reports.of("first", 0, 2, 3, 2)).decision().eases()).isFalse();
        assertThat(last(Reports.of("first", 0, 2, 2, 2)).decision()).isEqualTo(Decision.GO_ON);
        assertThat(last(Reports.of("first", 0, 2, 2, 2.5)).decision()).isEqualTo(Decision.HOLD);
    }

    /** Common practice: severe tingling interrupts; then less range and less speed. */
    @Test
    void severeTinglingInterruptsThenLessRangeAndSlower() {
        RespondResult severe = last(Reports.of("first", 0, 2, 8, 2));
        assertThat(severe.decision()).isEqualTo(Decision.PAUSE);
        HomeDose given = Reports.LADDER.dose(Reports.LADDER.given());
        NextDose next = severe.nextDose().orElseThrow();
        assertThat(next.dose().rangeFraction()).isLessThanOrEqualTo(given.rangeFraction() / 2);
        assertThat(next.dose().secondsPerDirection()).isGreaterThan(given.secondsPerDirection());
    }

    /** Common practice: three to five in a go, growing to ten; one to three times a day, as the response allows. */
    @Test
    void repetitionsGrowFromFiveToTenThenSessionsADay() {
        Followed good = Responder.respond(Reports.byRules(), days(40, 2, 2, 1), List.of());
        List<Integer> repetitions = good.results().stream()
                .map(result -> result.nextDose().orElseThrow().dose().repetitions())
                .distinct()
                .toList();
        assertThat(repetitions).containsExactly(5, 8, 10);
        NextDose end = good.results().get(39).nextDose().orElseThrow();
        assertThat(end.dose().sessionsPerDay()).as("the ceiling of the plan").isEqualTo(2);
        assertThat(Reports.LADDER.rungs())
                .allSatisfy(rung -> assertThat(rung.sessionsPerDay()).isBetween(1, 3));
    }

    /** Common practice: pain that goes while strength goes is no improvement. */
    @Test
    void lessPainWithNewWeaknessIsAnsweredTheSameDay() {
        List<CheckIn> log = days(5, 6, 6, 1);
        log.add(weak(Reports.of("first", 5, 2, 2, 0)));
        RespondResult answer =
                Responder.respond(Reports.byRules(), log, List.of()).results().get(5);
        assertThat(answer.decision()).isEqualTo(Decision.CONTACT_SAME_DAY);
        assertThat(answer.contact()).isEqualTo(Contact.SAME_DAY);
        assertThat(answer.rules()).contains("less-pain-more-weakness");
        assertThat(answer.nextDose()).isEmpty();
    }

    /** Common practice: what is felt the next day was too much. */
    @Test
    void aWorseMorningEasesAndASecondInTheWeekCalls() {
        CheckIn first = Reports.of("first", 0, 2, 3, 1, Morning.WORSE, EmergencyAnswer.NO);
        assertThat(last(first).decision()).isEqualTo(Decision.EASE);
        CheckIn second = Reports.of("first", 3, 2, 3, 1, Morning.WORSE, EmergencyAnswer.NO);
        RespondResult again = last(first, second);
        assertThat(again.contact()).isEqualTo(Contact.CALL);
        assertThat(again.rules()).contains("two-worse-mornings");
    }

    /** Common practice: after a week's break one step down; after two, back into the room first. */
    @Test
    void abreakOfAWeekResumesLowerAndOfTwoGoesToTheTherapist() {
        CheckIn before = Reports.of("first", 0, 2, 2, 1);
        RespondResult week = last(before, Reports.of("first", 8, 2, 2, 1));
        assertThat(week.nextDose().orElseThrow().rung()).isEqualTo(Reports.LADDER.given() - 1);
        RespondResult fortnight = last(before, Reports.of("first", 14, 2, 2, 1));
        assertThat(fortnight.decision()).isEqualTo(Decision.REST_AND_REVIEW);
        assertThat(fortnight.nextDose()).isEmpty();
    }

    /** 220 logged sessions were 176 measured ones: medians over 12 weeks, n = 54 (ndorms.ox.ac.uk publication 926887). */
    @Test
    void diariesOverReportByAQuarter() {
        assertThat(Reported.likelyDone(220)).isCloseTo(176, within(0.5));
    }

    private static RespondResult last(CheckIn... log) {
        List<RespondResult> results =
                Responder.respond(Reports.byRules(), List.of(log), List.of()).results();
        return results.get(results.size() - 1);
    }

    private static List<CheckIn> days(int count, int before, int worst, double settleMinutes) {
        var log = new ArrayList<CheckIn>();
        for (int day = 0; day < count; day++) {
            log.add(Reports.of("first", day, before, worst, settleMinutes));
        }
        return log;
    }

    private static CheckIn weak(CheckIn from) {
        return new CheckIn(
                from.id(),
                from.sessionId(),
                from.exercise(),
                from.startedAt(),
                from.before(),
                from.repetitionsDone(),
                from.worst(),
                from.kind(),
                from.usualPain(),
                from.reach(),
                from.settleMinutes(),
                from.nextMorning(),
                false,
                true,
                from.emergency(),
                from.flareExercise(),
                from.reportedAt());
    }
}
