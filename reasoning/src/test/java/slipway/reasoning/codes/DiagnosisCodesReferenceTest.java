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

    @Test
    void theClinicsOwnLineComesFirstFromItsFirstDayOn() {
        var own = DiagnosisCodes.of(new CodeSet(
                List.of(
                        own("G57.01", true, LocalDate.of(2026, 10, 1), Optional.of(LocalDate.of(2027, 10, 1))),
                        own("Z99.9", true, LocalDate.of(2026, 10, 1), Optional.empty())),
                List.of()));
        assertThat(own.find("G57.01", LocalDate.of(2026, 9, 30)).orElseThrow().mark())
                .isEqualTo("seen");
        assertThat(own.find("G57.01", LocalDate.of(2026, 10, 1)).orElseThrow().mark())
                .isEqualTo("clinic");
        assertThat(kinds(own.check(List.of("G57.01"), LocalDate.of(2026, 9, 30), Optional.empty())))
                .isEmpty();
        assertThat(kinds(own.check(List.of("G57.01"), LocalDate.of(2027, 9, 30), Optional.empty())))
                .isEmpty();
        // What the clinic has ended does not come back from the shipped set, which knows no end.
        assertThat(kinds(own.check(List.of("G57.01"), LocalDate.of(2027, 10, 1), Optional.empty())))
                .containsExactly(Kind.NO_LONGER_VALID);
        assertThat(kinds(own.check(List.of("Z99.9"), LocalDate.of(2026, 9, 30), Optional.empty())))
                .containsExactly(Kind.NOT_YET_VALID);
        assertThat(kinds(own.check(List.of("G57.02", "G57.0"), LocalDate.of(2026, 10, 1), Optional.empty())))
                .containsExactly(Kind.NOT_BILLABLE);
    }

    @Test
    void exclusionsOfTheClinicAddAndLift() {
        LocalDate day = LocalDate.of(2026, 1, 5);
        var own = DiagnosisCodes.of(new CodeSet(
                List.of(),
                List.of(new CodeExclusion("M54.3", "G57.0", 2, "own"), new CodeExclusion("G57.3", "G57.4", 1, "own"))));
        assertThat(own.check(List.of("G57.01", "M54.31"), day, Optional.empty()))
                .isEmpty();
        assertThat(kinds(own.check(List.of("G57.41", "G57.31"), day, Optional.empty())))
                .containsExactly(Kind.EXCLUDES_EACH_OTHER);
        assertThat(kinds(own.check(List.of("M54.31", "M54.41"), day, Optional.empty())))
                .containsExactly(Kind.EXCLUDES_EACH_OTHER);
    }

    @Test
    void aNewListIsLaidBesideWhatIsInUse() {
        LocalDate from = LocalDate.of(2015, 10, 1);
        LocalDate end = LocalDate.of(2027, 10, 1);
        var now = new CodeSet(List.of(own("Z99.9", true, from, Optional.empty())), List.of());
        var next = new CodeSet(
                List.of(
                        own("G57.01", false, from, Optional.empty()),
                        new CodeEntry(
                                "G57.02",
                                true,
                                CodeEntry.CodeSide.LEFT,
                                from,
                                Optional.of(end),
                                "sciatic nerve lesion",
                                "clinic",
                                "own"),
                        own("Z99.8", true, from, Optional.empty())),
                List.of());
        assertThat(CodeChange.between(now, next))
                .extracting(change -> change.line().code() + " " + change.kind())
                .containsExactly("G57.01 CHANGED", "G57.02 ENDED", "Z99.8 NEW", "Z99.9 TAKEN_OUT");
        assertThat(CodeChange.between(next, next)).isEmpty();
    }

    private static CodeEntry own(String code, boolean billable, LocalDate from, Optional<LocalDate> to) {
        return new CodeEntry(code, billable, CodeEntry.CodeSide.NONE, from, to, "own words", "clinic", "own");
    }

    private static List<CodeProblem> check(LocalDate service, Optional<Side> side, String... codes) {
        return DiagnosisCodes.bundled().check(Arrays.asList(codes), service, side);
    }

    private static List<Kind> kinds(List<CodeProblem> problems) {
        return problems.stream().map(CodeProblem::kind).toList();
    }
}
