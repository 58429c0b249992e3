package slipway.reasoning.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result.Grade;
import slipway.reasoning.findings.Result.Word;
import slipway.reasoning.screening.Region;

class LocatorPropertyTest {
    private static final double ROUNDING = 1e-9;
    private static final List<String> MUSCLES = List.of(
            "hip_flexors",
            "knee_extensors",
            "hip_adductors",
            "hip_abductors",
            "knee_flexors",
            "ankle_dorsiflexors",
            "ankle_plantarflexors",
            "hallux_extensors",
            "ankle_evertors",
            "ankle_invertors",
            "toe_flexors");
    private static final List<String> AREAS = List.of(
            "anterior_thigh", "medial_leg", "lateral_leg", "dorsum_foot", "sole", "lateral_foot", "posterior_thigh");

    private final Locator locator = Locator.load(Region.LEG, SitePrior.load(SitePrior.SCORING));

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theOrderOfFindingsChangesNothing(long seed) {
        List<Finding> findings = random(seed);
        var shuffled = new ArrayList<>(findings);
        Collections.shuffle(shuffled, new Random(seed + 100));
        assertThat(chances(shuffled)).containsExactly(chances(findings));
    }

    @ParameterizedTest
    @ValueSource(longs = {6, 7, 8, 9, 10})
    void mirroredFindingsGiveTheMirroredAnswer(long seed) {
        List<Finding> findings = random(seed);
        List<Finding> mirrored = findings.stream().map(Finding::mirrored).toList();
        Location one = locator.locate(LocateRequest.ofAnySide(findings));
        Location other = locator.locate(LocateRequest.ofAnySide(mirrored));
        for (Location.RankedSite site : one.sites()) {
            assertThat(other.probability(site.site().name())).isCloseTo(site.probability(), within(ROUNDING));
        }
        assertThat(other.side().left()).isCloseTo(one.side().right(), within(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void anUninformativeFindingChangesNothing(long seed) {
        List<Finding> findings = new ArrayList<>(random(seed));
        double[] before = chances(findings);
        findings.add(Finding.of(FindingKind.STRENGTH, "no_such_muscle", Side.LEFT, new Grade(2)));
        findings.add(Finding.of(FindingKind.SYMPTOM, "knee", Side.LEFT, Word.WEAKNESS));
        findings.add(findings.get(0));
        assertThat(chances(findings)).containsExactly(before);
    }

    @Test
    void chancesSumToOneAndLieWithinTheirIntervals() {
        Location location = locator.locate(LocateRequest.ofAnySide(random(20)));
        assertThat(location.sites().stream()
                        .mapToDouble(Location.RankedSite::probability)
                        .sum())
                .isCloseTo(1, within(ROUNDING));
        assertThat(location.sites())
                .allMatch(site -> site.interval().low() <= site.probability()
                        && site.probability() <= site.interval().high());
    }

    @Test
    void theTypicalFindingOfASiteSpeaksForItAgainstNoLesion() {
        for (Map.Entry<String, Finding> typical : typical().entrySet()) {
            Location location = locator.locate(LocateRequest.ofAnySide(List.of(typical.getValue())));
            double ratio = location.probability(typical.getKey()) / location.probability("somatic_referred");
            double before = prior(typical.getKey()) / prior("somatic_referred");
            assertThat(ratio / before).as(typical.getKey()).isGreaterThan(1.5);
        }
    }

    private double prior(String site) {
        double[] chances =
                SitePrior.load(SitePrior.SCORING).chances(locator.model().sites());
        return chances[locator.model().findSite(site).orElseThrow()];
    }

    private static Map<String, Finding> typical() {
        var typical = new LinkedHashMap<String, Finding>();
        typical.put("root_L2", weak("hip_flexors"));
        typical.put("root_L3", weak("knee_extensors"));
        typical.put("root_L4", Finding.of(FindingKind.REFLEX, "patellar", Side.LEFT, Word.ABSENT));
        typical.put("root_L5", weak("extensor_hallucis_longus"));
        typical.put("root_S1", Finding.of(FindingKind.REFLEX, "achilles", Side.LEFT, Word.ABSENT));
        typical.put("root_S2", weak("foot_intrinsics"));
        typical.put("superior_gluteal", weak("hip_abductors"));
        typical.put("sciatic_gluteal", weak("knee_flexors"));
        typical.put("sciatic_thigh", weak("ankle_plantarflexors"));
        typical.put("common_fibular_neck", weak("ankle_evertors"));
        typical.put("deep_fibular", weak("ankle_dorsiflexors"));
        typical.put("superficial_fibular", numb("dorsum_foot"));
        typical.put("tibial_popliteal", weak("toe_flexors"));
        typical.put("tibial_tarsal_tunnel", numb("sole"));
        typical.put("sural", numb("lateral_foot"));
        typical.put("femoral", weak("quadriceps"));
        typical.put("saphenous", numb("medial_leg"));
        typical.put("obturator", weak("hip_adductors"));
        typical.put("lateral_femoral_cutaneous", numb("lateral_thigh"));
        typical.put("cauda_equina", numb("perineum"));
        return typical;
    }

    private double[] chances(List<Finding> findings) {
        return locator.chances(LocateRequest.ofAnySide(findings));
    }

    private static List<Finding> random(long seed) {
        var random = new Random(seed);
        var findings = new ArrayList<Finding>();
        for (Side side : Side.values()) {
            for (String muscle : MUSCLES) {
                if (random.nextDouble() < 0.5) {
                    findings.add(Finding.of(FindingKind.STRENGTH, muscle, side, new Grade(2 + random.nextInt(4))));
                }
            }
            for (String area : AREAS) {
                if (random.nextDouble() < 0.5) {
                    Word result = random.nextBoolean() ? Word.NORMAL : Word.REDUCED;
                    findings.add(Finding.of(FindingKind.SENSATION, area, side, result));
                }
            }
            Word slr = random.nextBoolean() ? Word.POSITIVE : Word.NEGATIVE;
            findings.add(Finding.of(FindingKind.PROVOCATION, "slr", side, slr));
            findings.add(Finding.of(FindingKind.PROVOCATION, "slump", side, slr));
        }
        return findings;
    }

    private static Finding weak(String muscle) {
        return Finding.of(FindingKind.STRENGTH, muscle, Side.LEFT, new Grade(3));
    }

    private static Finding numb(String area) {
        return Finding.of(FindingKind.SENSATION, area, Side.LEFT, Word.REDUCED);
    }
}
