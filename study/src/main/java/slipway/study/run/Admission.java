package slipway.study.run;

import slipway.reasoning.irritability.Irritability;
import slipway.study.data.Settings;
import slipway.study.person.SimulatedPerson;
import slipway.study.policy.Intake;

/** What the first visit finds. */
final class Admission {
    private static final Settings CARE = Settings.load("care.csv");
    private static final double JUDGE_ERROR = CARE.value("judge-error");
    private static final double JUDGE_HIGH = CARE.value("judge-high");
    private static final double JUDGE_LOW = CARE.value("judge-low");
    private static final double HIGH_ONSET_DEG = CARE.value("high-onset");
    private static final int SEED = 99;

    private Admission() {}

    static Intake of(SimulatedPerson person, double onsetDeg) {
        double judged = person.judgedTrait(JUDGE_ERROR);
        Irritability level = judged > JUDGE_HIGH || onsetDeg < HIGH_ONSET_DEG
                ? Irritability.HIGH
                : judged < JUDGE_LOW ? Irritability.LOW : Irritability.MODERATE;
        return new Intake(
                person.hidden().seen(),
                onsetDeg,
                level,
                person.usualSymptom(),
                person.hidden().noise().seed(SEED));
    }
}
