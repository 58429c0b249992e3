package slipway.reasoning.dose;

import java.util.Locale;
import java.util.Optional;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.tolerance.Movement;
import slipway.reasoning.tolerance.NeuralTest;

/**
 * Keeps a tested movement short of its measured onset. A posture belongs to the tested movement if none of the other
 * joints is unloaded against the test by more than an allowance. Dorsiflexion beyond that of the test counts as degrees
 * of the tested joint at proximal sites, and so does flexion of the neck.
 */
final class BelowOnset implements Guard {
    private final NeuralTest test;
    private final Coefficient margin;
    private final boolean proximalSite;

    BelowOnset(NeuralTest test, Coefficient margin, boolean proximalSite) {
        this.test = test;
        this.margin = margin;
        this.proximalSite = proximalSite;
    }

    @Override
    public Optional<Reason> forbids(Posture posture) {
        Movement movement = test.movement();
        if (!inTestedMovement(posture)) {
            return Optional.empty();
        }
        double angleDeg = posture.angleDeg(movement.joint(), movement.limb());
        double countedDeg = angleDeg + movement.direction() * addedDeg(posture);
        double shortOfOnsetDeg = movement.direction() * (test.reachedDeg() - countedDeg);
        // Half a thousandth of a degree is rounding, not range.
        return shortOfOnsetDeg >= margin.value() - 0.0005 ? Optional.empty() : Optional.of(reason(countedDeg));
    }

    private Reason reason(double countedDeg) {
        String text = String.format(
                Locale.ROOT,
                "Goes no further into %s: there it would have to stay %.0f deg short of the onset at %.0f deg.",
                test.id(),
                margin.value(),
                test.reachedDeg());
        return Reason.by(margin, "guard.below-onset", text)
                .with("onset", test.reachedDeg(), "deg")
                .with("first forbidden", countedDeg, "deg");
    }

    private boolean inTestedMovement(Posture posture) {
        double allowance = DoseData.value("same-position");
        return loaded(posture, Joint.HIP, 1, allowance)
                && loaded(posture, Joint.KNEE, -1, allowance)
                && loaded(posture, Joint.ANKLE, 1, allowance)
                && loaded(posture, Joint.SPINE, 1, allowance)
                && loaded(posture, Joint.NECK, 1, allowance);
    }

    /** Whether a joint other than the tested one is at least as loading as in the test, less the allowance. */
    private boolean loaded(Posture posture, Joint joint, int loadingDirection, double allowance) {
        if (joint == test.movement().joint() && test.movement().limb() == Limb.OWN) {
            return true;
        }
        double beyondDeg =
                loadingDirection * (posture.angleDeg(joint) - test.reached().angleDeg(joint));
        return beyondDeg >= -allowance;
    }

    /** Degrees of the tested joint that count on top for what the ankle and the neck add to the test. */
    private double addedDeg(Posture posture) {
        double added = 0;
        double dorsiflexionDeg = posture.angleDeg(Joint.ANKLE) - test.reached().angleDeg(Joint.ANKLE);
        if (proximalSite && test.movement().joint() != Joint.ANKLE && dorsiflexionDeg > 0) {
            double cost = DoseData.value("dorsiflexion-cost");
            added += Math.max(cost, cost * dorsiflexionDeg / DoseData.value("dorsiflexion-cost-over"));
        }
        double neckDeg = posture.angleDeg(Joint.NECK) - test.reached().angleDeg(Joint.NECK);
        if (test.movement().joint() != Joint.NECK && neckDeg > DoseData.value("neck-allowance")) {
            added += DoseData.value("neck-cost");
        }
        return added;
    }
}
