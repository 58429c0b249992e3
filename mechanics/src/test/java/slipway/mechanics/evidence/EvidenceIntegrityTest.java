package slipway.mechanics.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Segment;

/** The frozen tables are whole: every number has a mark, every mark its locator, every reference its target. */
class EvidenceIntegrityTest {
    /** What may stand under {@code mark} of nerve-motion.csv. */
    private static final Set<String> MARKS = Set.of("seen", "memory");

    private static final Set<String> USES = Set.of("calibrate", "validate", "part", "geometry", "context", "later");

    private static final Set<String> QUANTITIES = Set.of(
            "excursion",
            "strain",
            "end-strain",
            "bed-elongation",
            "order",
            "same-end-state",
            "onset-shift",
            "left-right-difference",
            "cross-section-area");

    /** A source that can be found again names a year, or says what kind of collection it is. */
    private static final Pattern LOCATOR = Pattern.compile("\\b(19|20)\\d\\d\\b|meta-analysis|textbook");

    private static final List<CSVRecord> MOTION = BundledTable.read("nerve-motion.csv");

    @Test
    void everyRowHasAMarkAndAKnownUse() {
        assertThat(MOTION).hasSizeGreaterThan(40);
        assertThat(MOTION).allSatisfy(row -> {
            assertThat(row.get("mark")).as(row.get("id")).isIn(MARKS);
            assertThat(row.get("use")).as(row.get("id")).isIn(USES);
            assertThat(row.get("quantity")).as(row.get("id")).isIn(QUANTITIES);
        });
    }

    @Test
    void noRowMarkedSeenLacksALocator() {
        assertThat(MOTION)
                .filteredOn(row -> row.get("mark").equals("seen"))
                .allSatisfy(
                        row -> assertThat(row.get("study")).as(row.get("id")).containsPattern(LOCATOR));
    }

    @Test
    void everyIdIsGivenOnce() {
        assertThat(MOTION).extracting(row -> row.get("id")).doesNotHaveDuplicates();
    }

    @Test
    void everyFittedOrCheckedNumberHasItsSpreadAndUnit() {
        assertThat(MOTION)
                .filteredOn(
                        row -> Set.of("calibrate", "validate", "geometry").contains(row.get("use")) && !isOrder(row))
                .hasSizeGreaterThan(15)
                .allSatisfy(row -> {
                    assertThat(Double.parseDouble(row.get("mean")))
                            .as(row.get("id"))
                            .isFinite();
                    assertThat(Double.parseDouble(row.get("sd")))
                            .as(row.get("id"))
                            .isPositive();
                    assertThat(row.get("unit")).as(row.get("id")).isIn("mm", "%", "mm2");
                });
    }

    @Test
    void everyPostureReads() {
        assertThat(MOTION)
                .allSatisfy(row -> assertThatCode(() -> {
                            Posture.parse(row.get("from"));
                            Posture.parse(row.get("to"));
                        })
                        .as(row.get("id"))
                        .doesNotThrowAnyException());
        assertThat(BundledTable.read("positions.csv"))
                .hasSizeGreaterThan(5)
                .allSatisfy(row -> assertThatCode(() -> Posture.parse(row.get("posture")))
                        .as(row.get("position"))
                        .doesNotThrowAnyException());
    }

    @Test
    void everyOrderRowRefersToRowsThatExist() {
        Set<String> ids = MOTION.stream().map(row -> row.get("id")).collect(Collectors.toSet());
        assertThat(MOTION)
                .filteredOn(EvidenceIntegrityTest::isOrder)
                .hasSizeGreaterThan(2)
                .allSatisfy(row -> assertThat(row.get("relation").split("\\s*[<>;]\\s*"))
                        .as(row.get("id"))
                        .hasSizeGreaterThan(1)
                        .isSubsetOf(ids));
    }

    @Test
    void everyNamedPlaceOfALegRowIsASite() {
        Set<String> sites = BundledTable.read("sites.csv").stream()
                .map(row -> row.get("site"))
                .collect(Collectors.toSet());
        assertThat(MOTION)
                .filteredOn(row ->
                        !row.get("use").equals("later") && !row.get("site").isEmpty())
                .allSatisfy(row -> assertThat(row.get("site")).as(row.get("id")).isIn(sites));
    }

    @Test
    void everySiteHasAMarkAPlaceAndItsUncertainty() {
        assertThat(BundledTable.read("sites.csv")).hasSizeGreaterThan(10).allSatisfy(row -> {
            String site = row.get("site");
            assertThat(row.get("mark")).as(site).isNotBlank();
            assertThat(Segment.find(row.get("segment"))).as(site).isPresent();
            assertThat(Double.parseDouble(row.get("position"))).as(site).isBetween(0.0, 1.0);
            assertThat(Double.parseDouble(row.get("plusMinus"))).as(site).isBetween(0.001, 0.5);
        });
    }

    @Test
    void everyJointHasItsRangeAroundZero() {
        List<CSVRecord> rows = BundledTable.read("joints.csv");
        assertThat(rows)
                .extracting(row -> row.get("joint"))
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(Joint.values()).map(Joint::key).toList());
        assertThat(rows).allSatisfy(row -> {
            assertThat(Double.parseDouble(row.get("lowDeg")))
                    .as(row.get("joint"))
                    .isNegative();
            assertThat(Double.parseDouble(row.get("highDeg")))
                    .as(row.get("joint"))
                    .isPositive();
            assertThat(row.get("positive")).as(row.get("joint")).isNotBlank();
        });
    }

    private static boolean isOrder(CSVRecord row) {
        return row.get("quantity").equals("order");
    }
}
