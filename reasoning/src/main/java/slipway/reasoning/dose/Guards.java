package slipway.reasoning.dose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Posture;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.tolerance.NeuralFindings;
import slipway.reasoning.tolerance.NeuralTest;
import slipway.reasoning.tolerance.SymptomResponse;

/** All guards of one person on postures. */
final class Guards {
    private final List<Guard> guards;

    private Guards(List<Guard> guards) {
        this.guards = List.copyOf(guards);
    }

    /**
     * @param proximalSite whether any modelled suspected site is proximal
     */
    static Guards of(NeuralFindings neural, DoseFindings dose, Irritability irritability, boolean proximalSite) {
        Coefficient margin = DoseData.get(irritability == Irritability.HIGH ? "margin-high" : "margin");
        var guards = new ArrayList<Guard>();
        for (NeuralTest test : neural.ownTests()) {
            if (test.response() == SymptomResponse.FAMILIAR_SYMPTOM) {
                guards.add(new BelowOnset(test, margin, proximalSite));
            }
        }
        double endsDeg = dose.limits().contains(DoseLimit.NO_END_RANGE) ? DoseData.value("end-range") : 0;
        dose.ranges().forEach(range -> guards.add(posture -> outside(range.without(endsDeg), posture)));
        if (dose.limits().contains(DoseLimit.NO_SLUMP)) {
            guards.add(Guards::slumped);
        }
        dose.keptOut().forEach(end -> guards.add(posture -> inside(end, posture)));
        return new Guards(guards);
    }

    private static Optional<Reason> outside(MeasuredRange range, Posture posture) {
        if (range.allows(posture)) {
            return Optional.empty();
        }
        String text = String.format(
                Locale.ROOT,
                "Stays within %2$.0f to %3$.0f deg of the %1$s, as measured.",
                range.joint().key(),
                range.lowDeg(),
                range.highDeg());
        return Optional.of(Reason.finding("guard.measured-range", text)
                .with("lowest", range.lowDeg(), "deg")
                .with("highest", range.highDeg(), "deg"));
    }

    private static Optional<Reason> slumped(Posture posture) {
        Coefficient slump = DoseData.get("slump-spine");
        return posture.angleDeg(Joint.SPINE) < slump.value()
                ? Optional.empty()
                : Optional.of(Reason.by(slump, "guard.no-slump", "The screening allows no slump."));
    }

    private static Optional<Reason> inside(KeptOut end, Posture posture) {
        return end.contains(posture) ? Optional.of(Reason.finding("guard.end-position", end.why())) : Optional.empty();
    }

    /** Every guard that forbids a posture. */
    List<Reason> forbids(Posture posture) {
        return guards.stream().flatMap(guard -> guard.forbids(posture).stream()).toList();
    }
}
