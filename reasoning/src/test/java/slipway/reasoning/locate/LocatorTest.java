package slipway.reasoning.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result;
import slipway.reasoning.findings.Result.Grade;
import slipway.reasoning.findings.Result.Word;
import slipway.reasoning.screening.Region;

/** What textbooks teach about telling sites apart (evidence 2c, "Key discriminators"). */
class LocatorTest {
    private final Locator locator = Locator.load(Region.LEG, SitePrior.load(SitePrior.SCORING));

    @Test
    void footDropWithStrongInversionIsTheFibularNeckAndWithWeakInversionIsNot() {
        List<Finding> strong = List.of(
                weak("ankle_dorsiflexors"),
                weak("hallux_extensors"),
                weak("ankle_evertors"),
                full("ankle_invertors"),
                full("hip_abductors"));
        Location neck = locate(strong);
        assertThat(neck.leading().site().name()).isEqualTo("common_fibular_neck");
        Location notNeck = locate(replaced(strong, weak("ankle_invertors")));
        assertThat(notNeck.probability("common_fibular_neck")).isLessThan(0.1);
    }

    @Test
    void weakInversionWithNormalHipAbductionIsSciaticRatherThanRoot() {
        List<Finding> normalAbduction = List.of(
                weak("ankle_dorsiflexors"),
                weak("ankle_invertors"),
                weak("ankle_evertors"),
                weak("knee_flexors"),
                full("hip_abductors"));
        Location sciatic = locate(normalAbduction);
        assertThat(sciatic.leading().site().name()).isEqualTo("sciatic_gluteal");
        Location rootOrPlexus = locate(replaced(normalAbduction, weak("hip_abductors")));
        assertThat(rootOrPlexus.probability("root_L5") + rootOrPlexus.probability("plexus_sacral"))
                .isGreaterThan(3 * sciatic(rootOrPlexus));
    }

    @Test
    void aNumbMedialLegSpeaksAgainstTheSciaticNerve() {
        List<Finding> spared = List.of(
                weak("ankle_dorsiflexors"),
                weak("ankle_plantarflexors"),
                feeling("dorsum_foot", Word.REDUCED),
                feeling("medial_leg", Word.NORMAL));
        double sparedChance = sciatic(locate(spared));
        double numbChance = sciatic(locate(replaced(spared, feeling("medial_leg", Word.REDUCED))));
        assertThat(numbChance).isLessThan(sparedChance / 2);
    }

    @Test
    void onlyTheFibularDivisionIsSaidToBeBeyondTheBedside() {
        Location location = locate(List.of(weak("ankle_dorsiflexors"), weak("ankle_evertors")));
        assertThat(location.verdict().notes()).anyMatch(note -> note.contains("short head of biceps"));
    }

    @Test
    void withoutAnyTellingFindingNoSitePassesTheCap() {
        var findings = List.of(
                Finding.of(FindingKind.SYMPTOM, "lateral_thigh", Side.LEFT, Word.PAIN),
                Finding.of(FindingKind.SYMPTOM, "lateral_thigh", Side.LEFT, Word.NUMB),
                Finding.of(FindingKind.STRENGTH, "all_leg_muscles", Side.LEFT, Word.NORMAL),
                Finding.of(FindingKind.REFLEX, "patellar", Side.LEFT, Word.NORMAL));
        Location location = locate(findings);
        assertThat(location.sites()).allMatch(site -> site.probability() <= 0.5 + 1e-9);
        assertThat(location.scored()).allMatch(site -> site.probability() <= 0.5 + 1e-9);
        assertThat(location.verdict().enough()).isFalse();
        assertThat(location.verdict().sentence()).startsWith("Not enough to tell");
    }

    @Test
    void contradictionsAreRefusedAndUnknownWordsReported() {
        assertThatThrownBy(() -> locate(List.of(weak("quadriceps"), full("quads"))))
                .hasMessageContaining("contradicts");
        Location location = locate(List.of(weak("ankle_dorsiflexors"), weak("elbow_wiggler"), weak("triceps")));
        assertThat(location.notUsed())
                .extracting(each -> each.finding().target())
                .containsExactly("elbow_wiggler", "triceps");
    }

    @Test
    void aFindingFarFromTheLeadingSiteStaysUnexplained() {
        Location location = locate(List.of(
                weak("ankle_dorsiflexors"),
                weak("hallux_extensors"),
                weak("ankle_evertors"),
                full("ankle_invertors"),
                full("hip_abductors"),
                feeling("anterior_thigh", Word.REDUCED)));
        assertThat(location.unexplained()).extracting(Finding::target).containsExactly("anterior_thigh");
        assertThat(location.leading().reasons().get(0).ratio()).isNotEqualTo(1.0);
    }

    @Test
    void findsTheMedianNerveInTheCarpalTunnel() {
        Locator arm = Locator.load(Region.ARM, SitePrior.load(SitePrior.SCORING));
        Location location = arm.locate(LocateRequest.ofAnySide(List.of(
                feeling("index_finger", Word.REDUCED),
                feeling("middle_finger", Word.REDUCED),
                feeling("thenar_palm", Word.NORMAL),
                feeling("little_finger", Word.NORMAL),
                weak("abductor_pollicis_brevis"),
                full("elbow_extensors"),
                Finding.of(FindingKind.PROVOCATION, "phalen", Side.LEFT, Word.POSITIVE))));
        assertThat(location.leading().site().name()).isEqualTo("median_wrist");
        assertThat(location.side().clear()).contains(Side.LEFT);
    }

    private Location locate(List<Finding> findings) {
        return locator.locate(LocateRequest.ofAnySide(findings));
    }

    private static double sciatic(Location location) {
        return location.probability("sciatic_gluteal") + location.probability("sciatic_thigh");
    }

    private static List<Finding> replaced(List<Finding> findings, Finding changed) {
        var list = new ArrayList<>(findings);
        list.replaceAll(each -> each.target().equals(changed.target()) ? changed : each);
        return list;
    }

    private static Finding weak(String muscle) {
        return strength(muscle, new Grade(3));
    }

    private static Finding full(String muscle) {
        return strength(muscle, new Grade(5));
    }

    private static Finding strength(String muscle, Result result) {
        return Finding.of(FindingKind.STRENGTH, muscle, Side.LEFT, result);
    }

    private static Finding feeling(String area, Word result) {
        return Finding.of(FindingKind.SENSATION, area, Side.LEFT, result);
    }
}
