package slipway.care.casefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.groups.Tuple.tuple;
import static slipway.care.casefile.CaseText.complete;
import static slipway.care.casefile.CaseText.read;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.care.casefile.RangesOfMotion.Ends;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.reasoning.screening.Answer;

class CaseFilesTest {
    @Test
    void readsPersonAndFrame() {
        CaseFile file = read(complete());
        assertThat(file.id()).isEqualTo("test-case");
        assertThat(file.provenance().invented()).isTrue();
        assertThat(file.patient().statureCm()).isEqualTo(170);
        assertThat(file.episode().side()).isEqualTo(Side.LEFT);
        assertThat(file.episode().clinic().emergencyNumber()).isEqualTo("112");
        assertThat(file.episode().history().habits()).containsExactly("sitting", "wallet");
        assertThat(file.episode().history().find("onset")).contains("after gardening");
        assertThat(file.safety().answers()).hasSizeGreaterThan(15).containsEntry("saddleNumbness", Answer.NO);
        assertThat(file.screeningInput().ageYears()).hasValue(40);
    }

    @Test
    void readsTestsAsPosturesOfTheMovedLeg() {
        List<TestEntry> tests = read(complete()).examination().tests();
        assertThat(tests.get(0).reached()).isEqualTo(Posture.parse("hip 50 neck 10"));
        assertThat(tests.get(0).changed()).isTrue();
        assertThat(tests.get(0).remoteMovements()).singleElement().satisfies(movement -> {
            assertThat(movement.joint()).isEqualTo(Joint.NECK);
            assertThat(movement.change()).isEqualTo(RemoteMovement.Change.WORSENED);
        });
        assertThat(tests.get(1).changed()).isFalse();
        assertThat(tests.get(1).reached()).isEqualTo(Posture.parse("hip 85 ankle -20 neck 10"));
        assertThat(tests.get(2).reached())
                .isEqualTo(Position.get("slump").posture().with(Joint.KNEE, 40));
    }

    @Test
    void readsMeasuredEndsAsJointAngles() {
        Examination examination = read(complete()).examination();
        // Five degrees short of straight is a joint angle that cannot go below 5.
        assertThat(examination.ranges().of(Side.LEFT, Joint.KNEE))
                .isEqualTo(new Ends(OptionalDouble.of(5), OptionalDouble.of(140)));
        assertThat(examination.ranges().of(Side.RIGHT, Joint.NECK).highDeg()).hasValue(45);
        assertThat(examination.ranges().of(Side.RIGHT, Joint.HIP)).isEqualTo(Ends.UNKNOWN);
        assertThat(examination.pressureLimits()).singleElement().satisfies(limit -> {
            assertThat(limit.joint()).isEqualTo(Joint.HIP_ROTATION);
            assertThat(limit.limitDeg()).isEqualTo(20);
            assertThat(limit.towardsPositive()).isTrue();
        });
    }

    @Test
    void readsSitesAndFindings() {
        CaseFile file = read(complete());
        assertThat(file.sites()).extracting(SiteWeight::name).containsExactly("deep gluteal space", "hip joint");
        assertThat(file.sites()).extracting(site -> site.site().isPresent()).containsExactly(true, false);
        assertThat(file.examination().findings())
                .extracting(finding -> finding.text())
                .contains(
                        "strength of hip abductors left: 4+",
                        "reflex of achilles left: reduced",
                        "provocation of slr left: positive",
                        "reflex of achilles right: normal");
    }

    @Test
    void leavesOpenWhatIsNotSaid() {
        CaseFile file = read(complete().replaceAll("(?ms)^history:.*", ""));
        assertThat(file.examination().rest().name()).isEqualTo("lying knees bent");
        assertThat(file.examination().irritability().worstPain()).isEmpty();
        assertThat(file.examination().tests()).isEmpty();
        assertThat(file.episode().abilities().canLieOnFloor()).isEqualTo(Optional.empty());
    }

    @Test
    void tellsEveryMistakeAtOnceWithItsPlace() {
        String text = complete()
                        .replace("statureCm: 170", "statureCm: 1.70")
                        .replace("irritability: {worstPain: 6", "irritability: {worstPian: 6")
                        .replace("onsetDeg: 50", "onsetDeg: 150")
                        .replace("strength: {ankle_dorsiflexors: 5", "strength: {ankle_dorsiflxors: 5")
                        .replace("probability: 0.3", "probability: 0.2")
                        .replace("  saddleNumbness: no\n", "")
                + "side: right\n";
        var refused = catchThrowableOfType(MistakesException.class, () -> read(text));
        assertThat(refused.mistakes())
                .extracting(Mistake::path, Mistake::message)
                .containsExactlyInAnyOrder(
                        tuple("person.statureCm", "must be at least 100, was 1.7"),
                        tuple("irritability.worstPian", "unknown key \"worstPian\" (nearest: worstPain)"),
                        tuple("tests[0].onsetDeg", "hip must be within -40 and 140 deg, was 150"),
                        tuple(
                                "examination.left.strength.ankle_dorsiflxors",
                                "unknown strength item \"ankle_dorsiflxors\" (nearest: ankle_dorsiflexors)"),
                        tuple("sites", "probabilities must sum to 1, summed to 0.900"),
                        tuple("screening", "the key \"saddleNumbness\" is missing"),
                        tuple("side", "duplicate key, first given on line 5"));
        assertThat(refused.mistakes())
                .allSatisfy(mistake -> assertThat(mistake.line()).isPositive());
        assertThat(refused).hasMessageContaining("case.yaml: line 4, column 56: person.statureCm: must be");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            onsetDeg: 50                     | onsetDeg: 50°                      | must be of type number, was "50°"
            onsetDeg: 50                     | onsetDeg: .nan                     | must be of type number, was ".nan"
            onsetDeg: 50                     | onsetDeg: 1e400                    | must be of type number, was "1e400"
            onsetDeg: 50                     | onsetDeg: -10                      | must be above 0 deg, where the test starts, was -10
            onsetDeg: 50                     | negativeUpToDeg: 50                | a test with the familiar symptom is not negative
            onsetDeg: 50                     | restingSymptom: 2                  | duplicate key
            onsetDeg: 40, symptom: tingling  | onsetDeg: 40, symptom: stretch     | a stretch is no onset
            tingling, familiar: yes}         | tingling, negativeUpToDeg: 30, familiar: yes} | had both
            negativeUpToDeg: 85, symptom: stretch | symptom: stretch              | had neither
            test: slump, side: left          | test: slump                        | the key "side" is missing
            posture: ankle 0                 | posture: ankle 99                  | ankle must be within -60 and 40 deg, was 99
            posture: ankle 0                 | posture: hip 20                    | must not name hip, the joint that moves
            joint: neck, fromDeg             | joint: nekc, fromDeg               | unknown joint "nekc" (nearest: neck)
            toDeg: 40, limbHeld              | toDeg: 10, limbHeld                | must move between two angles, was 10 deg twice
            side: right, negativeUpToDeg: 85 | side: left, posture: ankle 0, negativeUpToDeg: 85 | duplicate test: straight-leg-raise left in the same posture as on line
            knee: {flexion: 140, extension: -5} | knee: {flexion: 4, extension: -5} | the two ends of knee leave no range
            dorsiflexion: 15                 | dorsiflexion: 70                   | ankle must be within -60 and 40 deg, was 70
            movement: internalRotation       | movement: dorsiflexion             | must be a movement of the hip, was "dorsiflexion"
            site: hip joint                  | site: deep gluteal space           | names the same site as on line
            site: hip joint                  | site: hpi joint                    | unknown word "hpi joint" (nearest: hip joint)
            hip_abductors: "4+"              | hip_abductors: 7                   | grade must be within 0 and 5
            hip_abductors: "4+"              | hip_abductors: strongish           | no result of a strength item, was "strongish"
            id: test-case                    | id: Maria Lopez                    | a short name for the case
            setting: therapy                 | setting: hospitall                 | unknown word "hospitall"
            emergencyNumber: "112"           | emergencyNumber: 112               | must be of type string, was 112
            invented: yes                    | invented: no                       | the key "source" is missing
            format: 1                        | format: 2                          | must be 1, was 2
            comfortablePositions: [lying knees bent | comfortablePositions: [floating | unknown word "floating"
            likes to walk]}                  | x], exercises: [a], refused: [{exercise: a, reason: no}]} | refuses an exercise that choices.exercises asks for, a
            """)
    void refuses(String good, String bad, String message) {
        assertThat(complete()).contains(good);
        assertThatThrownBy(() -> read(complete().replace(good, bad)))
                .isInstanceOf(MistakesException.class)
                .hasMessageContaining(message);
    }

    @Test
    void wantsADateThatExists() {
        assertThatThrownBy(() -> read(complete()
                        + "clearances: [{rule: keyMuscleWeak, who: surgeon, when: 2026-02-30, outcome: old}]\n"))
                .hasMessageContaining("clearances[0].when: must be a date as year-month-day, was \"2026-02-30\"");
    }

    @Test
    void wantsInventedPartsToBePathsOfTheFile() {
        assertThat(read(complete() + "inventedParts: [person.statureCm, 'tests[1].side']\n")
                        .provenance()
                        .inventedParts())
                .hasSize(2);
        assertThatThrownBy(() -> read(complete() + "inventedParts: [person.shoeSize]\n"))
                .hasMessageContaining("must be the path of a value in this file, was \"person.shoeSize\"");
    }

    @Test
    void refusesALegRaiseThatStandsTwiceWithDifferentResults() {
        String text = complete().replace("onsetDeg: 50", "onsetDeg: 70");
        var refused = catchThrowableOfType(MistakesException.class, () -> read(text));
        assertThat(refused.mistakes())
                .extracting(Mistake::message)
                .anySatisfy(message -> assertThat(message).contains("straight-leg-raise left disagrees"));
    }
}
