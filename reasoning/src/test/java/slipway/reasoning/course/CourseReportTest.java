package slipway.reasoning.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class CourseReportTest {
    private static final Series GETTING_BETTER = Courses.series("rmdq", 0, 14, 1, 13, 2, 11, 3, 12, 5, 8, 7, 6);

    @Test
    void fewerThanThreeScoresSaySo() {
        var report = Courses.report(2, List.of(Courses.goal("rmdq", 14, 5)), Courses.series("rmdq", 0, 14, 1, 12));
        assertThat(report.measures().get(0).trend()).isEmpty();
        assertThat(report.measures().get(0).trendSentence()).contains("2 scores", "too few", "it takes 3");
        assertThat(report.goals().get(0).state()).isEqualTo(Outlook.State.TOO_FEW_SCORES);
        assertThat(report.goals().get(0).text()).contains("2 of the 3 scores");
    }

    @Test
    void laterScoresDoNotCountAndTwoOfOneDayAreOne() {
        var report = Courses.report(2, List.of(), GETTING_BETTER);
        assertThat(report.measures().get(0).series().scores()).hasSize(3);
        assertThat(Courses.series("pain", 0, 4, 0, 7, 0, 5).scores()).containsExactly(new Dated(Courses.START, 5));
    }

    @Test
    void anEasierTargetHasTheBetterChance() {
        assertThat(chance(9)).isGreaterThan(chance(7)).isLessThan(1);
        assertThat(chance(7)).isGreaterThan(chance(3));
        assertThat(chance(3)).isGreaterThan(0);
    }

    private static double chance(double target) {
        var report = Courses.report(
                5,
                List.of(Courses.goal("rmdq", 14, target)),
                Courses.series("rmdq", 0, 14, 1, 13, 2, 11, 3, 12, 5, 10));
        return report.goals().get(0).chance().orElseThrow();
    }

    @Test
    void goalsAreMetMissedOrNeverMeasured() {
        var met = Courses.report(7, List.of(Courses.goal("rmdq", 14, 6)), GETTING_BETTER);
        assertThat(met.goals().get(0).state()).isEqualTo(Outlook.State.MET);
        assertThat(met.goals().get(0).text()).isEqualTo("Met on 2026-02-23 with 6.");
        var missed = Courses.report(9, List.of(Courses.goal("rmdq", 14, 5)), GETTING_BETTER);
        assertThat(missed.goals().get(0).state()).isEqualTo(Outlook.State.MISSED);
        var never = Courses.report(7, List.of(Courses.goal("lefs", 40, 60)), GETTING_BETTER);
        assertThat(never.goals().get(0).text()).contains("0 of the 3 scores");
    }

    @Test
    void stallTakesTwoMeasuresAndAnOpenGoal() {
        Series still = Courses.series("rmdq", 0, 14, 4, 13, 6, 13, 8, 12);
        Series alsoStill = Courses.series("lefs", 0, 40, 4, 41, 8, 44);
        Series moving = Courses.series("lefs", 0, 40, 4, 41, 8, 60);
        List<Goal> open = List.of(Courses.goal("psfs", 3, 6));
        assertThat(Courses.report(8, open, still, alsoStill).stall().stalled()).isTrue();
        assertThat(Courses.report(8, open, still, moving).stall().stalled()).isFalse();
        assertThat(Courses.report(8, open, still).stall().text()).contains("one measure alone is no stall");
        Series reached = Courses.series("psfs", 0, 3, 8, 7);
        assertThat(Courses.report(8, open, still, alsoStill, reached).stall().stalled())
                .isFalse();
    }

    @Test
    void aRecoveredMeasureDoesNotStall() {
        assertThat(Stall.of(Courses.series("rmdq", 0, 14, 4, 2, 8, 1), Courses.week(8)))
                .isEqualTo(Stall.Verdict.AT_ITS_BEST);
        assertThat(Stall.of(Courses.series("rmdq", 0, 14, 7, 9, 8, 9), Courses.week(8)))
                .isEqualTo(Stall.Verdict.NOT_KNOWN);
        assertThat(Stall.of(Courses.series("ears", 0, 14, 5, 14, 8, 14), Courses.week(8)))
                .isEqualTo(Stall.Verdict.NOT_KNOWN);
    }

    @Test
    void weeksFourSixAndEightAskForWhatIsDue() {
        Series within = Courses.series("rmdq", 0, 14, 4, 11);
        assertThat(actions(Courses.report(27 / 7.0, List.of(), within))).isEmpty();
        assertThat(actions(Courses.report(4, List.of(), within))).containsExactly(Milestone.Action.EXAMINE_AGAIN);
        assertThat(actions(Courses.report(4, List.of(), Courses.series("rmdq", 0, 14))))
                .containsExactly(Milestone.Action.MEASURE);
        Series severe = Courses.series("pain", 0, 9, 6, 7);
        assertThat(actions(Courses.report(6, List.of(), severe))).containsExactly(Milestone.Action.OPINION);
        assertThat(actions(Courses.report(8, List.of(), Courses.series("rmdq", 0, 14, 7, 6))))
                .containsExactly(Milestone.Action.END_OR_REFER);
    }

    @Test
    void dischargeNamesWhatIsMissing() {
        Goal goal = Courses.goal("rmdq", 14, 6);
        var report = Courses.report(7, List.of(), GETTING_BETTER);
        assertThat(report.discharge().missing())
                .containsExactly(
                        "no goal was set",
                        "0 of 14 days without a visit",
                        "no report on flares while alone",
                        "no plan for a relapse");
        var plan = new Discharge.RelapsePlan(2, List.of("the tingling stays for a day"));
        var input = new CourseInput(
                Courses.START,
                List.of(GETTING_BETTER),
                List.of(goal),
                new Discharge.Alone(OptionalInt.of(14), OptionalInt.of(0)),
                Optional.of(plan));
        assertThat(CourseReport.of(input, Courses.week(7)).discharge().ready()).isTrue();
        assertThat(plan.sentences())
                .containsExactly(
                        "If it comes back, start again at step 2.", "Call us if the tingling stays for a day.");
    }

    private static List<Milestone.Action> actions(CourseReport report) {
        return report.milestones().stream().map(Milestone::action).toList();
    }
}
