package slipway.reasoning.codes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.mechanics.body.Side;
import slipway.reasoning.codes.CodeProblem.Kind;

/**
 * Levels, dates and notes of the official code set as seen in copies: G57.0- and its exclusion notes (hccbuddy.com, FY2026),
 * M54.5 no longer valid from 1 October 2021 (korbaspineclinic.com).
 */
class DiagnosisCodesReferenceTest {
    @ParameterizedTest(name = "{0} on {1}")
    @CsvSource({
        "G57.0, 2026-01-05, NOT_BILLABLE",
        "G57.01, 2026-01-05, ",
        "G57, 2026-01-05, NOT_BILLABLE",
        "M54.5, 2021-09-30, ",
        "M54.5, 2021-10-01, NO_LONGER_VALID",
        "M54.50, 2021-10-01, ",
        "M54.50, 2021-09-30, NOT_YET_VALID",
        "M51.36, 2024-10-01, NO_LONGER_VALID",
        "M51.360, 2024-10-01, ",
    })
    void levelAndDatesAreChecked(String code, LocalDate service, Kind rejected) {
        List<CodeProblem> problems = check(service, Optional.empty(), code);
        assertThat(problems.stream().filter(CodeProblem::rejects).map(CodeProblem::kind))
                .containsExactlyElementsOf(rejected == null ? List.of() : List.of(rejected));
    }

    @Test
    void exclusionsAreWarnedOfAndOnlyThoseOfTheFirstKind() {
        LocalDate day = LocalDate.of(2026, 1, 5);
        assertThat(check(day, Optional.empty(), "G57.01", "M54.31"))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.kind()).isEqualTo(Kind.EXCLUDES_EACH_OTHER);
                    assertThat(problem.rejects()).isFalse();
                    assertThat(problem.text()).contains("G57.01", "M54.31", "Excludes1");
                });
        assertThat(check(day, Optional.empty(), "M51.16", "G57.01")).isEmpty();
    }

    @Test
    void sidesAreHeldAgainstTheEpisode() {
        LocalDate day = LocalDate.of(2026, 1, 5);
        assertThat(check(day, Optional.of(Side.RIGHT), "G57.31")).isEmpty();
        assertThat(check(day, Optional.of(Side.RIGHT), "G57.33")).isEmpty();
        assertThat(kinds(check(day, Optional.of(Side.RIGHT), "G57.32"))).containsExactly(Kind.OTHER_SIDE);
        assertThat(kinds(check(day, Optional.of(Side.RIGHT), "G57.30"))).containsExactly(Kind.SIDE_OPEN);
    }

    @Test
    void theRestIsNamedToo() {
        LocalDate day = LocalDate.of(2026, 1, 5);
        assertThat(kinds(check(day, Optional.empty(), "G57.01", "G57.01"))).containsExactly(Kind.TWICE);
        assertThat(kinds(check(day, Optional.empty(), "Z99.9"))).containsExactly(Kind.NOT_IN_LIST);
        assertThat(kinds(check(day, Optional.empty(), ""))).containsExactly(Kind.NOT_IN_LIST);
        assertThat(kinds(check(day, Optional.empty(), "G83.4"))).containsExactly(Kind.EMERGENCY);
        assertThat(DiagnosisCodes.bundled().list(day))
                .extracting(CodeEntry::code)
                .contains("G57.01", "M54.50")
                .doesNotContain("G57.0", "M54.5");
    }

    private static List<CodeProblem> check(LocalDate service, Optional<Side> side, String... codes) {
        return DiagnosisCodes.bundled().check(Arrays.asList(codes), service, side);
    }

    private static List<Kind> kinds(List<CodeProblem> problems) {
        return problems.stream().map(CodeProblem::kind).toList();
    }
}
