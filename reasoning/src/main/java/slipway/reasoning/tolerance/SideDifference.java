package slipway.reasoning.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.basis.Reason;

/** Sides compared for leg raises done the same way on both, against the difference that healthy people show. */
final class SideDifference {
    private SideDifference() {}

    static List<Reason> compare(NeuralFindings findings) {
        var reasons = new ArrayList<Reason>();
        for (NeuralTest own : findings.ownTests()) {
            findings.tests().stream()
                    .filter(other -> other.side() != own.side() && comparable(own, other))
                    .findFirst()
                    .ifPresent(other -> reasons.add(reason(own, other)));
        }
        return reasons;
    }

    /** Published for the raised leg only. A crossed response ends the raise early for a reason of the other limb. */
    private static boolean comparable(NeuralTest own, NeuralTest other) {
        return own.response() == SymptomResponse.FAMILIAR_SYMPTOM
                && other.response() != SymptomResponse.CROSSED_SYMPTOM
                && raise(own)
                && raise(other)
                && own.start().equals(other.start());
    }

    private static boolean raise(NeuralTest test) {
        return test.movement().joint() == Joint.HIP
                && test.movement().limb() == Limb.OWN
                && test.family() == TestFamily.RAISED_LEG;
    }

    private static Reason reason(NeuralTest own, NeuralTest other) {
        Coefficients data = ToleranceData.COEFFICIENTS;
        Coefficient mean = data.get("side-difference-mean");
        double limitDeg = mean.value() + data.value("side-difference-z") * data.value("side-difference-sd");
        double differenceDeg = other.reachedDeg() - own.reachedDeg();
        boolean unusual = Math.abs(differenceDeg) > limitDeg;
        String text = String.format(
                Locale.ROOT,
                "The affected side responded at %.0f deg, the other %s %.0f deg: %s healthy people show (5.0 ± 3.5 deg).",
                own.reachedDeg(),
                other.response().censored() ? "reached at least" : "responded at",
                other.reachedDeg(),
                unusual ? "a larger difference than" : "no more difference than");
        return Reason.by(mean, unusual ? "nerve.side-difference" : "nerve.sides-alike", text)
                .with("side-difference", differenceDeg, "deg");
    }
}
