package slipway.care.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.care.reports.CaseScores.Chance;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.locate.Locator;
import slipway.reasoning.locate.SitePrior;
import slipway.reasoning.screening.RedFlagNotes;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.Screening;
import slipway.reasoning.screening.ScreeningInput;

class PublishedCasesTest {
    /** Foot drop in words only: without a grade the rule about grade 3 cannot be judged, and the screening says so. */
    private static final List<String> KNOWN_MISSES = List.of("L5-03", "CF-05", "DF-01");

    @Test
    void readsHalfGradesSidesAndPlaces() throws IOException {
        List<PublishedCase> cases = PublishedCases.bundled();
        assertThat(cases).hasSize(38);
        PublishedCase first = cases.get(0);
        assertThat(first.sides()).isEqualTo(EnumSet.of(Side.RIGHT));
        assertThat(first.findings())
                .filteredOn(finding -> finding.target().equals("hip_flexors"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.result().text()).isEqualTo("4+");
                    assertThat(finding.location()).startsWith("line ");
                });
        assertThat(cases).allMatch(each -> each.notUsed().isEmpty());
    }

    @Test
    void nestedSidesAndContralateralFindingsKeepTheirSide() throws IOException {
        List<PublishedCase> cases = read("""
                - id: A
                  side: left
                  strength: {left: {quadriceps: 3}, right: {quadriceps: 5}}
                  reflexes: {contralateral_patellar: normal}
                """);
        assertThat(cases.get(0).findings())
                .filteredOn(finding -> finding.kind() == FindingKind.REFLEX)
                .singleElement()
                .satisfies(finding -> assertThat(finding.side()).isEqualTo(Side.RIGHT));
        assertThat(cases.get(0).findings()).hasSize(3);
    }

    @Test
    void aBlockMayHoldOneWordAndAnEmptyOneSaysNothing() throws IOException {
        List<PublishedCase> cases = read("""
                - id: A
                  side: left
                  strength: normal
                  sensation:
                """);
        assertThat(cases.get(0).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.target()).isEqualTo("all_leg_muscles"));
        assertThat(cases.get(0).notUsed()).isEmpty();
    }

    @Test
    void theScreeningMeetsTheArguedLevelOfEachCase() throws IOException {
        Screening screening = Screening.load();
        var misses = new ArrayList<String>();
        for (PublishedCase each : PublishedCases.bundled()) {
            var input = new ScreeningInput(
                    Region.LEG,
                    RedFlagNotes.read(each.redFlags()).answers(),
                    List.of(),
                    each.findings(),
                    each.ageYears(),
                    java.util.Optional.empty());
            String level = screening.evaluate(input).level().key();
            if (!level.equals(each.facts().get("expectedLevel"))) {
                misses.add(each.id());
            }
        }
        assertThat(misses).containsExactlyElementsOf(KNOWN_MISSES);
    }

    /** The aim is 75 % first and 90 % in the first three; the second is missed (28 of 32), see docs/validation-locate.md. */
    @Test
    void theRankingMeetsTheConfirmedSiteAsOftenAsRecorded() throws IOException {
        Locator locator = Locator.load(Region.LEG, SitePrior.load(SitePrior.SCORING));
        CaseScores scores = CaseScores.of(
                PublishedCases.bundled(),
                each -> locator.rank(CaseScores.request(each)).scored().stream()
                        .map(site -> new Chance(site.site(), site.probability()))
                        .toList());
        CaseScores tested = scores.withTested(2);
        assertThat(tested.rows()).hasSize(32);
        assertThat(tested.among(1)).isGreaterThanOrEqualTo(24);
        assertThat(tested.among(3)).isGreaterThanOrEqualTo(28);
        assertThat(scores.rows()).filteredOn(row -> row.tested() == 0).allMatch(row -> row.leadingChance() <= 0.5);
    }

    private static List<PublishedCase> read(String yaml) throws IOException {
        return PublishedCases.readAll("cases.yaml", new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8)));
    }
}
