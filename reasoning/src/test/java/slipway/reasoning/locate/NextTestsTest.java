package slipway.reasoning.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result.Grade;
import slipway.reasoning.findings.Result.Word;
import slipway.reasoning.screening.Region;

class NextTestsTest {
    private static final double ROUNDING = 1e-9;

    private final Locator locator = Locator.load(Region.LEG, SitePrior.load(SitePrior.SCORING));
    private final NextTests next = new NextTests(locator);
    private final LocateRequest footDrop = new LocateRequest(
            List.of(Finding.of(FindingKind.STRENGTH, "ankle_dorsiflexors", Side.RIGHT, new Grade(2))),
            EnumSet.of(Side.RIGHT));

    @Test
    void proposesThreeUntestedItemsOnTheSideInQuestionWithConsistentOutcomes() {
        NextTests.Advice advice = next.advise(footDrop, ExamLimits.none());
        assertThat(advice.best()).hasSize(3).allSatisfy(test -> {
            assertThat(test.side()).isEqualTo(Side.RIGHT);
            assertThat(test.item()).isNotEqualTo("ankle_dorsiflexors");
            assertThat(test.entropyDrop()).isPositive();
            assertThat(test.outcomes().stream()
                            .mapToDouble(NextTest.Outcome::chance)
                            .sum())
                    .isCloseTo(1, within(ROUNDING));
        });
        assertThat(advice.best()).extracting(NextTest::worth).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void whatItPredictsForAResultIsWhatTheResultGives() {
        NextTest first = next.advise(footDrop, ExamLimits.none()).best().get(0);
        assertThat(first.kind()).isEqualTo(FindingKind.STRENGTH);
        NextTest.Shift predicted = first.outcomes().get(1).sites().get(0);
        var findings =
                List.of(footDrop.findings().get(0), Finding.of(first.kind(), first.item(), Side.RIGHT, new Grade(5)));
        Locator.Solved solved = locator.solvedSingles(new LocateRequest(findings, footDrop.sides()));
        int site = locator.model().findSite(predicted.site()).orElseThrow();
        assertThat(solved.chances()[site]).isCloseTo(predicted.after(), within(ROUNDING));
    }

    @Test
    void aPlaceThatWasTappedUnderAnotherNameIsNotProposedAgain() {
        var findings = List.of(
                footDrop.findings().get(0),
                Finding.of(FindingKind.PROVOCATION, "tinel_fibular_head", Side.RIGHT, Word.NEGATIVE));
        var everything = new ExamLimits(false, false, 0, false, Set.of());
        assertThat(next.advise(new LocateRequest(findings, footDrop.sides()), everything)
                        .withheld())
                .noneMatch(text -> text.startsWith("tinel_fibular_neck"))
                .anyMatch(text -> text.startsWith("tinel_tarsal_tunnel"));
    }

    @Test
    void nothingIsProposedBeforeTheEmergencyQuestions() {
        NextTests.Advice advice = next.advise(footDrop, new ExamLimits(false, false, 0, false, Set.of()));
        assertThat(advice.best()).isEmpty();
        assertThat(advice.withheld()).allMatch(text -> text.contains("emergency questions"));
    }

    @Test
    void highIrritabilityAndProtectedJointsHoldTestsBack() {
        NextTests.Advice advice = next.advise(footDrop, new ExamLimits(true, true, 2, true, Set.of("hip_abductors")));
        assertThat(String.join("; ", advice.withheld()))
                .contains("slump: too provocative")
                .contains("slr: two provocation tests")
                .contains("faber: a joint")
                .contains("hip_abductors: cannot be done today");
    }

    /** Simulated people only; the sizes are small, so that the test is quick, and the seed is fixed. */
    @Test
    void askingWhatTellsMostLeadsToTheRightSiteMoreOftenThanAFixedOrder() {
        var study = new ExaminationStudy(locator);
        var told = study.run(ExaminationStudy.Rule.MOST_TOLD, 40, 8, 42);
        var fixed = study.run(ExaminationStudy.Rule.TEXTBOOK_ORDER, 40, 8, 42);
        assertThat(told.firstRight()).isGreaterThan(fixed.firstRight());
    }
}
