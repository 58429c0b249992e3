package slipway.reasoning.dose;

import java.util.List;
import java.util.Locale;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Reason;

/** Sentences about ranges and refusals. */
final class DoseWords {
    private DoseWords() {}

    static Reason noStep(ExerciseCandidate candidate) {
        return Reason.by(
                DoseData.get("angle-step"),
                "range.no-step",
                "The offered movement of the %s is smaller than one step of 5 deg."
                        .formatted(candidate.lead().joint().key()));
    }

    static Reason noTolerance() {
        return Reason.practice(
                "range.no-tolerance",
                "Nothing tells the tolerance in this position: test in it, or record that it is comfortable.");
    }

    /** The smallest range is already too much, by a guard or by its load. */
    static Reason tooMuch(List<Reason> forbidden, double probabilityAbove) {
        if (!forbidden.isEmpty()) {
            Reason first = forbidden.get(0);
            return new Reason(
                    first.rule(),
                    "Even the smallest range is too much. " + first.text(),
                    first.numbers(),
                    first.source(),
                    first.mark());
        }
        String text = String.format(
                Locale.ROOT,
                "Even the smallest range is too much: its peak load is above the limit in %.0f of 100 draws.",
                100 * probabilityAbove);
        return Reason.by(DoseData.get("chance-below-limit"), "range.too-much", text)
                .with("above limit", probabilityAbove, "probability");
    }

    static Reason peak(Effect effect) {
        String text = String.format(
                Locale.ROOT,
                "Expected below where symptoms began: peak load %.2f %% above rest against a limit of %.2f %%, above it"
                        + " in %.0f of 100 draws.",
                effect.peakLoadPct().median(),
                effect.limitPct(),
                100 * effect.probabilityAboveLimit());
        return Reason.by(DoseData.get("chance-below-limit"), "range.below-limit", text)
                .with("above limit", effect.probabilityAboveLimit(), "probability");
    }

    /** Why the range ends where it does. */
    static Reason end(boolean maximised, boolean stopped, boolean byGuard) {
        if (!maximised) {
            return Reason.by(
                    DoseData.get("comfort-share"), "range.comfort", "The range is kept to the middle, for comfort.");
        }
        if (!stopped) {
            return Reason.practice("range.whole", "The whole range of the exercise stays below the limit.");
        }
        if (byGuard) {
            return Reason.practice("range.guard", "A guard ends the range, whatever the model says.");
        }
        return Reason.by(
                DoseData.get("chance-below-limit"),
                "range.limit",
                "One step further the peak load would be too likely" + " to reach the limit.");
    }

    static Reason notShown(Effect effect, Site site) {
        return Reason.by(
                        DoseData.get("least-glide"),
                        "range.no-movement-shown",
                        "No movement is shown at the %s: the exercise is for comfort.".formatted(site.name()))
                .with("glide", effect.glideMm().median(), "mm");
    }

    static Reason triedFirst() {
        return Reason.practice(
                "plan.tried-first",
                "Each exercise is tried once in the room, and onset and weak muscles are tested again, before it goes home.");
    }

    static Reason many(int count) {
        return Reason.by(
                        DoseData.get("most-exercises"),
                        "plan.many-exercises",
                        "More than four exercises: people do fewer of them. Choose two to four.")
                .with("exercises", count, "exercises");
    }

    static Reason review() {
        return Reason.practice(
                "plan.review", "No exercise can be given now: examine again, treat in the room, or refer.");
    }

    /** What to do in the place of what was refused. */
    static Reason instead(List<DosedExercise> given, boolean otherLeg) {
        String other = otherLeg
                ? "the other leg may be moved instead"
                : "the other leg is not to be moved instead, because raising it brought out the symptom";
        String text = given.isEmpty()
                ? "For what is refused: a joint further from the site, or review; %s.".formatted(other)
                : "For what is refused: begin with %s; %s; or review."
                        .formatted(given.get(0).range().candidate().id(), other);
        return Reason.practice("plan.instead", text);
    }
}
