package slipway.reasoning.caseload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.reasoning.measures.Measures;

class CaseloadReferenceTest {
    private static final double PRINTED_DIGITS = 0.0005;
    private static final double ROUNDING = 1e-9;

    /**
     * Remission times of the 6-MP arm, Freireich 1963, Blood 21:699, as tabled in textbooks of survival analysis: 0.857,
     * 0.807, 0.753, 0.690, 0.627, 0.538, 0.448, median 23.
     */
    @Test
    void productLimitOfTheRemissionTimes() {
        var episodes = new ArrayList<EpisodeFacts>();
        IntStream.of(6, 6, 6, 7, 10, 13, 16, 22, 23).forEach(days -> episodes.add(episode("a", days, true, 0)));
        IntStream.of(6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35)
                .forEach(days -> episodes.add(episode("a", days, false, 0)));
        TimeToEnd curve = TimeToEnd.of(episodes);
        double[] published = {0.857, 0.807, 0.753, 0.690, 0.627, 0.538, 0.448};
        assertThat(curve.steps()).hasSize(7);
        for (int i = 0; i < 7; i++) {
            assertThat(curve.steps().get(i).inCare()).isCloseTo(published[i], within(PRINTED_DIGITS));
        }
        assertThat(curve.medianDays()).hasValue(23);
        assertThat(TimeToEnd.of(episodes.subList(9, 21)).medianDays()).isEmpty();
    }

    /** The binomial distribution of SciPy 1.17.1, interpolated as in Spiegelhalter 2005. */
    @ParameterizedTest
    @CsvSource({
        "50, 0.6, 0.3712515157990714, 0.451665290765604, 0.7240553630666082, 0.7966287637625115",
        "20, 0.3, 0.0014773166882814937, 0.08117650598067591, 0.4872551465951469, 0.6136996793479673",
        "200, 0.6, 0.4892941470175514, 0.5291178083501774, 0.6648563120863409, 0.7029996119642243",
        "10, 0.05, 0, 0, 0.18191668914724415, 0.3029537415471779",
    })
    void funnelLimits(int people, double target, double alarmLow, double warnLow, double warnHigh, double alarmHigh) {
        Funnel.Limits limits = Funnel.limits(target, people);
        assertThat(limits.alarmLow()).isCloseTo(alarmLow, within(ROUNDING));
        assertThat(limits.warnLow()).isCloseTo(warnLow, within(ROUNDING));
        assertThat(limits.warnHigh()).isCloseTo(warnHigh, within(ROUNDING));
        assertThat(limits.alarmHigh()).isCloseTo(alarmHigh, within(ROUNDING));
    }

    /** NumPy's default percentiles of 1 2 4 7 11 12 are 2.5, 5.5 and 10. */
    @Test
    void quartilesAreTheUsualOnes() {
        assertThat(CaseloadReport.Quartiles.of(new double[] {12, 1, 7, 2, 11, 4}))
                .isEqualTo(new CaseloadReport.Quartiles(2.5, 5.5, 10));
    }

    @Test
    void smallCountsAreNotShownNorHowSmallTheyAre() {
        assertThat(Shown.share(4, 4)).isEqualTo(new Shown.TooFew<>(5));
        assertThat(Shown.share(3, 20)).isInstanceOf(Shown.TooFew.class);
        assertThat(Shown.share(17, 20)).isInstanceOf(Shown.TooFew.class);
        assertThat(Shown.share(0, 20)).isInstanceOf(Shown.Figure.class);
        assertThat(Shown.share(5, 10)).isEqualTo(new Shown.Figure<>(new Shown.Share(5, 10), 10));
        var few = CaseloadReport.of(episodes("a", 4, 10), "rmdq");
        assertThat(few.measures().get("rmdq")).isInstanceOf(Shown.TooFew.class);
        assertThat(few.reportedDays()).isInstanceOf(Shown.TooFew.class);
        assertThat(few.groups()).isEmpty();
    }

    @Test
    void aGroupFarFromTheRestIsUnusual() {
        var all = new ArrayList<EpisodeFacts>();
        all.addAll(episodes("usual", 30, 9));
        all.addAll(episodes("usual", 10, 1));
        all.addAll(episodes("other", 30, 1));
        all.addAll(episodes("other", 6, 9));
        all.addAll(episodes("tiny", 3, 1));
        // The whole less the two others would be the tiny one.
        assertThat(CaseloadReport.of(all, "rmdq").groups()).isEmpty();
        all.addAll(episodes("as tiny", 3, 1));
        CaseloadReport report = CaseloadReport.of(all, "rmdq");
        assertThat(report.groups().keySet()).containsExactlyInAnyOrder("usual", "other");
        assertThat(report.groups().entrySet())
                .anyMatch(
                        each -> "other".equals(each.getKey()) && each.getValue().place() == Funnel.Place.UNUSUAL);
        assertThat(report.medianDaysToDischarge()).isEqualTo(new Shown.Figure<>(OptionalInt.of(50), 82));
        assertThat(report.measures().get("rmdq"))
                .isInstanceOfSatisfying(
                        Shown.Figure.class,
                        figure -> assertThat(figure.people()).isEqualTo(82));
    }

    private static List<EpisodeFacts> episodes(String group, int count, double gain) {
        return IntStream.range(0, count)
                .mapToObj(i -> episode(group, 50, true, gain))
                .toList();
    }

    private static EpisodeFacts episode(String group, int days, boolean ended, double gain) {
        var change = Measures.bundled().get("rmdq").change(14, 14 - gain);
        return new EpisodeFacts(group, days, ended, OptionalDouble.of(0.7), Optional.of(false), Map.of("rmdq", change));
    }
}
