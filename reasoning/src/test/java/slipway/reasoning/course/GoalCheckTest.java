package slipway.reasoning.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.reasoning.course.GoalCheck.Kind;

class GoalCheckTest {
    @Test
    void aWholeGoalReadsAsOneSentence() {
        assertThat(Courses.goal("rmdq", 14, 5).sentence())
                .isEqualTo("Ida Holm will walk to the harbour and back without a rest, 20 minutes:"
                        + " Roland-Morris from 14 to 5 by 2026-03-02.");
    }

    @Test
    void anEmptyDraftNamesEverythingThatIsMissing() {
        var empty = new GoalDraft(
                "g", " ", "", "", Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
        var verdict = GoalCheck.of(empty, Courses.START);
        assertThat(verdict.goal()).isEmpty();
        assertThat(verdict.flaws())
                .extracting(GoalCheck.Flaw::kind)
                .containsExactlyInAnyOrder(
                        Kind.NO_PERSON,
                        Kind.NO_FUNCTION,
                        Kind.NO_CONDITION,
                        Kind.NO_MEASURE,
                        Kind.NO_BASELINE,
                        Kind.NO_TARGET,
                        Kind.NO_DATE);
    }

    @ParameterizedTest
    @CsvSource({
        "rmdq, 14, 10, WITHIN_ERROR", // 4 < MDC 5
        "rmdq, 14, 14, WRONG_WAY",
        "lefs, 50, 40, WRONG_WAY",
        "lefs, 40, 48, WITHIN_ERROR", // 8 < MDC90 9, Binkley 1999
        "odi, 40, 101, OUTSIDE_SCALE",
        "pain, 8, 6.2, NOT_IMPORTANT", // 1.8 is more than the error 1.77, less than the important 2
    })
    void numbersAreHeldAgainstTheMeasure(String measure, double baseline, double target, Kind flaw) {
        var verdict = GoalCheck.of(Courses.draft(measure, baseline, target), Courses.START);
        assertThat(verdict.flaws()).extracting(GoalCheck.Flaw::kind).containsExactly(flaw);
        assertThat(verdict.goal().isPresent()).isEqualTo(flaw.hint());
    }

    /** O'Neill & Harris 1982 give "patient will get stronger" as the poor goal. */
    @Test
    void gettingStrongerIsNoActivityAndAnOldDateIsNoDate() {
        var good = Courses.draft("rmdq", 14, 5);
        var poor = new GoalDraft(
                "g",
                good.person(),
                "Get stronger",
                good.condition(),
                good.measureId(),
                good.baseline(),
                good.target(),
                Optional.of(Courses.START));
        assertThat(GoalCheck.of(poor, Courses.START).flaws())
                .extracting(GoalCheck.Flaw::kind)
                .containsExactly(Kind.NO_FUNCTION, Kind.PAST_DATE);
    }
}
