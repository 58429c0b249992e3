package slipway.care.casefile;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.ScreeningRules;

/** Text of a case for tests: complete and without mistakes, so that a test shows only what it changes. */
final class CaseText {
    private CaseText() {}

    static String complete() {
        return """
                format: 1
                id: test-case
                invented: yes
                person: {name: Test Person, ageYears: 40, sex: female, statureCm: 170, massKg: 70}
                side: left
                language: en
                clinic: {setting: therapy, phone: "555 0100", emergencyNumber: "112"}
                """ + screening() + """
                history: {onset: after gardening, durationWeeks: 6, habits: [sitting, wallet]}
                irritability: {worstPain: 6, usualPain: 3, restPain: 1, nightPain: 2, settleMinutes: 20, judgement: moderate}
                rangeOfMotion:
                  left: {hip: {flexion: 115, extension: 10}, knee: {flexion: 140, extension: -5}, ankle: {dorsiflexion: 15}}
                  trunk: {neck: {flexion: 45}}
                tests:
                  - test: straight-leg-raise
                    side: left
                    posture: ankle 0
                    onsetDeg: 50
                    restingSymptom: 1
                    symptom: pain
                    familiar: yes
                    remoteMovements:
                      - {joint: neck, fromDeg: 10, toDeg: 40, limbHeld: yes, change: worsened}
                  - {test: straight-leg-raise, side: right, negativeUpToDeg: 85, symptom: stretch}
                  - {test: slump, side: left, onsetDeg: 40, symptom: tingling, familiar: yes}
                pressureLimits:
                  - {side: left, joint: hip, movement: internalRotation, limitDeg: 20, because: seated piriformis stretch}
                sittingMinutes: 25
                comfortablePositions: [lying knees bent, sitting]
                restPosture: lying knees bent
                sites:
                  - {site: deep gluteal space, probability: 0.7, reason: provoked by sitting}
                  - {site: hip joint, probability: 0.3, reason: groin pain}
                examination:
                  left:
                    strength: {ankle_dorsiflexors: 5, hip_abductors: "4+"}
                    reflexes: {patellar: normal, achilles: reduced}
                    sensation: {S1_dermatome: reduced}
                    provocation: {slr: {positive: yes, degrees: 50}, faber: negative}
                    symptoms: {buttock: pain}
                  right: {reflexes: {achilles: normal}}
                abilities: {canLieOnFloor: yes, canHoldStrap: yes}
                choices: {remarks: [likes to walk]}
                """;
    }

    static String screening() {
        return "screening:\n"
                + ScreeningRules.load().listRequired(Region.LEG).stream()
                        .map(rule -> "  " + rule.id() + ": no\n")
                        .collect(Collectors.joining());
    }

    static CaseFile read(String text) {
        return CaseFiles.read(text.getBytes(StandardCharsets.UTF_8), "case.yaml");
    }
}
