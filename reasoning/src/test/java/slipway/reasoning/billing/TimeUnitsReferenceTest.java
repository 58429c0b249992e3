package slipway.reasoning.billing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published table and worked examples. Table: CMS Claims Processing Manual, Pub. 100-04, ch. 5 §20.2, as printed by
 * a Medicare contractor (FCSO, 9 April 2024). Examples 1 to 3: findacode.com article 26634 (CMS text); 4 and 5: from
 * memory of the same text; 6: UTHealth billing page; 7: chirofreeinfo.com. Midpoint: Premera "billing for time" and Blue
 * Cross of Idaho policy 228.
 */
class TimeUnitsReferenceTest {
    @ParameterizedTest
    @CsvSource({
        "0,0", "7,0", "8,1", "22,1", "23,2", "37,2", "38,3", "52,3", "53,4", "67,4", "68,5", "82,5", "83,6", "97,6",
        "98,7", "112,7", "113,8", "127,8", "128,9"
    })
    void everyEdgeOfTheTableHolds(int minutes, int units) {
        assertThat(TimeUnits.of(minutes)).isEqualTo(units);
        for (UnitRule rule : UnitRule.values()) {
            assertThat(TimeUnits.allocate(rule, services(minutes)).units()).isEqualTo(units);
        }
    }

    @ParameterizedTest(name = "{0} minutes")
    @CsvSource(
            delimiter = '|',
            value = {
                "24 23       | 3 | 2 1     | ",
                "20 20       | 3 | 2 1     | A B",
                "33 7        | 3 | 2 1     | ",
                "18 13 10 8  | 3 | 1 1 1 0 | ",
                "7 7 7       | 1 | 1 0 0   | A B C",
                "18 10       | 2 | 1 1     | ",
                "8 8 18      | 2 | 1 0 1   | A B",
                "18 8 8      | 2 | 1 1 0   | B C",
                "5 6         | 1 | 0 1     | ",
                "22 22       | 3 | 2 1     | A B",
                "30 8        | 3 | 2 1     | ",
                "8 8         | 1 | 1 0     | A B"
            })
    void eightMinuteRuleGivesTheWorkedExamples(String minutes, int units, String each, String tied) {
        Allocation day = TimeUnits.allocate(UnitRule.EIGHT_MINUTE, services(numbers(minutes)));
        assertThat(day.units()).isEqualTo(units);
        assertThat(day.lines()).extracting(Allocation.Line::units).containsExactlyElementsOf(list(each));
        assertThat(day.tie().map(Allocation.Tie::among).orElse(List.of()))
                .containsExactlyElementsOf(tied == null ? List.of() : Arrays.asList(tied.split(" ")));
    }

    @ParameterizedTest(name = "{0} minutes")
    @CsvSource(
            delimiter = '|',
            value = {
                "24 23      | 4 | 2 2",
                "20 20      | 2 | 1 1",
                "33 7       | 2 | 2 0",
                "18 13 10 8 | 4 | 1 1 1 1",
                "7 7 7      | 0 | 0 0 0",
                "18 10      | 2 | 1 1",
                "18 8 8     | 3 | 1 1 1",
                "8 8        | 2 | 1 1",
                "5 6        | 0 | 0 0",
                "22 22      | 2 | 1 1",
                "30 8       | 3 | 2 1"
            })
    void midpointRuleCountsEachServiceAlone(String minutes, int units, String each) {
        Allocation day = TimeUnits.allocate(UnitRule.MIDPOINT, services(numbers(minutes)));
        assertThat(day.units()).isEqualTo(units);
        assertThat(day.lines()).extracting(Allocation.Line::units).containsExactlyElementsOf(list(each));
        assertThat(day.tie()).isEmpty();
    }

    /** All days of up to three services: each full quarter of an hour keeps its unit, and no unit is lost or invented. */
    @Test
    void handsOutExactlyWhatTheDayAllows() {
        for (int a = 0; a <= 34; a++) {
            for (int b = 0; b <= 34; b++) {
                for (int c = 0; c <= 34; c++) {
                    Allocation day = TimeUnits.allocate(UnitRule.EIGHT_MINUTE, services(a, b, c));
                    assertThat(day.units()).isEqualTo((a + b + c + 7) / 15);
                    assertThat(day.lines())
                            .allMatch(line -> line.units() >= line.service().minutes() / 15
                                    && line.units() <= line.wholeUnits() + 1
                                    && (line.service().minutes() > 0 || line.units() == 0));
                }
            }
        }
    }

    private static List<TimedService> services(int... minutes) {
        var services = new ArrayList<TimedService>();
        for (int each : minutes) {
            services.add(new TimedService(Character.toString('A' + services.size()), each));
        }
        return services;
    }

    private static int[] numbers(String text) {
        return Stream.of(text.split(" ")).mapToInt(Integer::parseInt).toArray();
    }

    private static List<Integer> list(String text) {
        return Stream.of(text.split(" ")).map(Integer::valueOf).toList();
    }
}
