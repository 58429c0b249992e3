package slipway.reasoning.dose;

import java.util.Locale;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Reason;

/** Sentences about exercises that might have been given. */
final class ChoiceWords {
    private ChoiceWords() {}

    /** Both were designed for this person; the other one serves less. */
    static Reason less(DesignedRange best, DesignedRange other, Site site) {
        String text = String.format(
                Locale.ROOT,
                "For this person it slides the nerve %s at the %s; %s, which the %s leads too, %s.",
                effect(other.effect()),
                site.name(),
                best.candidate().id(),
                best.candidate().lead().joint().key(),
                effect(best.effect()));
        return Reason.by(DoseData.get("contenders-per-joint"), "choice.less-glide", text)
                .with("glide", other.effect().glideMm().median(), "mm")
                .with("glide of the chosen one", best.effect().glideMm().median(), "mm")
                .with("glide to load", other.effect().glideToLoad(), "mm per % strain")
                .with("glide to load of the chosen one", best.effect().glideToLoad(), "mm per % strain");
    }

    private static String effect(Effect effect) {
        return effect.movementShown()
                ? String.format(
                        Locale.ROOT,
                        "%.1f mm (%.1f mm per %% of load%s)",
                        effect.glideMm().median(),
                        effect.glideToLoad(),
                        effect.directionUnsure() ? ", direction not known" : "")
                : "by no amount that is shown";
    }

    /** The plan has an exercise that the same joint leads. */
    static Reason sameJoint(ExerciseCandidate given, ExerciseCandidate passedOver) {
        int rank = Eligibility.positionRank(passedOver.support()) - Eligibility.positionRank(given.support());
        String why = rank > 0
                ? "in a position that is borne better"
                : "which goes before it for this place and this irritability";
        return Reason.practice(
                "choice.same-joint",
                "The %s leads %s already, %s.".formatted(given.lead().joint().key(), given.id(), why));
    }

    /** A first plan holds no more. */
    static Reason enough(int count) {
        return Reason.by(
                        DoseData.get("most-exercises"),
                        "choice.enough",
                        "The plan has %d glides already, which come first: lying before sitting, the own leg, the joint furthest from the place."
                                .formatted(count))
                .with("glides", count, "exercises");
    }
}
