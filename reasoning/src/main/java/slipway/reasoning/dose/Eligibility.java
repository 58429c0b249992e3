package slipway.reasoning.dose;

import java.util.Optional;
import java.util.Set;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Support;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.tolerance.BehavesLikeNerve;
import slipway.reasoning.tolerance.Movement;

/** Whether an exercise may be looked at, before any load is computed. */
final class Eligibility {
    private Eligibility() {}

    /** Why no exercise may be given without supervision; empty if nothing forbids. */
    static Optional<Reason> forbidsAll(DoseCase dose) {
        if (dose.blocked().isPresent()) {
            return dose.blocked();
        }
        if (dose.neural().ownTests().isEmpty()) {
            return Optional.of(Reason.practice(
                    "start.no-test",
                    "No neural test of the affected limb is recorded, so nothing is known of its tolerance: examine"
                            + " first."));
        }
        if (dose.tolerance().report().behavesLikeNerve() == BehavesLikeNerve.NO) {
            return Optional.of(Reason.practice(
                    "start.not-nerve",
                    "The symptoms do not behave like nerve and something else explains them: no nerve glides."));
        }
        Coefficient pain = DoseData.get("usual-pain");
        if (dose.findings().usualPain().orElse(0) >= pain.value()) {
            return Optional.of(Reason.by(
                            pain,
                            "start.usual-pain",
                            "Usual pain is 7 of 10 or more: no start without supervision; try it in the room or review.")
                    .with("usual pain", dose.findings().usualPain().orElseThrow(), pain.unit()));
        }
        double outside = 1 - dose.neural().modelledShare();
        Coefficient mostly = DoseData.get("mostly-not-modelled");
        if (outside >= mostly.value()) {
            return Optional.of(Reason.by(
                            mostly,
                            "start.mostly-not-modelled",
                            "At least half of the suspicion lies on places that the nerve model does not know: review"
                                    + " before any nerve glide.")
                    .with("not modelled", outside, "probability"));
        }
        return Optional.empty();
    }

    /** Why this exercise may not be given. */
    static Optional<Reason> forbids(ExerciseCandidate candidate, DoseCase dose, Site site) {
        if (dose.neural().crossedPositive() && moves(candidate, Limb.OTHER)) {
            return Optional.of(Reason.finding(
                    "guard.crossed-raise", "Raising the other leg brought out the symptom: it is not used instead."));
        }
        Joint lead = candidate.lead().joint();
        if (lead == Joint.NECK && !dose.findings().neckScreened()) {
            return Optional.of(Reason.practice(
                    "guard.neck-screen", "No movement that the neck leads before the neck was screened."));
        }
        if (candidate.purpose() == Purpose.TENSION) {
            return Optional.of(Reason.practice(
                    "start.both-ends", "Loading both ends together is no start; it comes late on the ladder."));
        }
        Optional<Reason> screening =
                forbiddenByScreening(candidate, dose.findings().limits());
        if (screening.isPresent()) {
            return screening;
        }
        if (StartRule.of(dose.startLevel()).lyingOnly() && positionRank(candidate.support()) > 0) {
            return Optional.of(Reason.practice(
                    "start.lying", "With high irritability the start is lying, where the load is least."));
        }
        if (dose.neural().symptomsAtRest() && !remote(candidate, site)) {
            return Optional.of(Reason.practice(
                    "start.symptoms-at-rest",
                    "With symptoms at rest only a joint far from the site or the other leg may move; else review."));
        }
        return Optional.empty();
    }

    private static Optional<Reason> forbiddenByScreening(ExerciseCandidate candidate, Set<DoseLimit> limits) {
        if (limits.contains(DoseLimit.NO_LEG_LOADING) && moves(candidate, Limb.OWN)) {
            return Optional.of(Reason.practice(
                    "screening.no-leg-loading", "The leg is left alone until the physician has decided."));
        }
        if (limits.contains(DoseLimit.NO_PRONE) && candidate.support() == Support.PRONE) {
            return Optional.of(Reason.practice("screening.no-prone", "The screening allows no lying on the belly."));
        }
        if (limits.contains(DoseLimit.LYING_ONLY) && positionRank(candidate.support()) > 0) {
            return Optional.of(Reason.practice("screening.lying-only", "The screening allows lying positions only."));
        }
        return Optional.empty();
    }

    private static boolean moves(ExerciseCandidate candidate, Limb limb) {
        return candidate.moves().stream().anyMatch(move -> move.limb() == limb);
    }

    /** The other leg, or only the one joint of the leg that is furthest from the site. */
    private static boolean remote(ExerciseCandidate candidate, Site site) {
        return candidate.moves().stream().allMatch(move -> move.limb() == Limb.OTHER || furthest(move, site));
    }

    private static boolean furthest(Movement move, Site site) {
        double distance = Pathway.distance(move.joint(), site);
        return distance >= Pathway.distance(Joint.HIP, site)
                && distance >= Pathway.distance(Joint.KNEE, site)
                && distance >= Pathway.distance(Joint.ANKLE, site);
    }

    /** 0 for lying, 1 for sitting, 2 for upright: the order in which positions are tried. */
    static int positionRank(Support support) {
        return switch (support) {
            case LYING, SIDE_LYING, PRONE -> 0;
            case SITTING, LONG_SITTING -> 1;
            case STANDING, KNEELING, ALL_FOURS -> 2;
        };
    }
}
