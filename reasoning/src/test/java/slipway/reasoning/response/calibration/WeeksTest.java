package slipway.reasoning.response.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.reasoning.response.checkin.EmergencyAnswer;
import slipway.reasoning.response.checkin.Session;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.course.Ruled;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.ladder.Ladder;

/** Which weeks count: none twice, kept up to the first flare or the end, told to the end. */
class WeeksTest {
    private static final long DAY = 24 * 60;

    private Course course = Course.start(Ladder.through(new HomeDose(5, 1, 1, 1, 3), new Ceiling(5, 1, 1)), false, 0);

    @Test
    void weeksDoNotOverlap() {
        for (int day = 1; day <= 15; day++) {
            did(day, 0);
        }
        Weeks weeks = Weeks.of(daily(0, 15), List.of(course));
        assertThat(weeks.weeks()).containsExactly(new Week(0.1, false), new Week(0.1, false));
        assertThat(weeks.leftOut()).as("the week that is not over").isEqualTo(1);
    }

    @Test
    void aFlareCountsThoughItBringsTheDoseDown() {
        for (int day = 1; day <= 8; day++) {
            did(day, day == 3 ? 5 : 0);
        }
        assertThat(course.changes()).hasSizeGreaterThan(1);
        assertThat(Weeks.of(daily(0, 1), List.of(course))).isEqualTo(new Weeks(List.of(new Week(0.1, true)), 0));
    }

    @Test
    void aWeekWhoseDoseChangedWithoutAFlareIsLeftOut() {
        for (int day = 1; day <= 8; day++) {
            did(day, day == 3 ? 2 : 0);
        }
        assertThat(course.changes()).hasSizeGreaterThan(1);
        assertThat(Weeks.of(daily(0, 1), List.of(course))).isEqualTo(new Weeks(List.of(), 1));
    }

    @Test
    void aWeekOfSilenceIsLeftOut() {
        did(1, 0);
        assertThat(Weeks.of(daily(0, 1), List.of(course))).isEqualTo(new Weeks(List.of(), 1));
    }

    private static List<Forecast> daily(int from, int to) {
        return java.util.stream.IntStream.range(from, to)
                .mapToObj(day -> new Forecast(day * DAY, 0.1))
                .toList();
    }

    private void did(int day, double rise) {
        var session = new Session(
                "s" + day, day * DAY, day, 2, 2 + rise, 5, 1, 0, 3, false, false, false, EmergencyAnswer.NO);
        Ruled ruled = Ruled.on(course.with(session), session.id(), session.startMinute() + 20, false);
        course = ruled.moveTo(ruled.mostRung());
    }
}
