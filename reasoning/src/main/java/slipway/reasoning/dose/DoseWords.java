package slipway.reasoning.dose;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.dose.RangeSearch.Step;

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
    static Reason tooMuch(Optional<Step> stopped) {
        Optional<Reason> guard =
                stopped.flatMap(step -> step.forbidden().stream().findFirst());
        if (guard.isPresent()) {
            Reason by = guard.get();
            String text = "Even the smallest range is too much. " + by.text();
            return new Reason(by.rule(), text, by.numbers(), by.source(), by.mark());
        }
        double above = stopped.map(Step::probabilityAbove).orElse(0.0);
        String text = String.format(
                Locale.ROOT,
                "Even the smallest range is too much: its peak load is above the limit in %.0f of 100 draws.",
                100 * above);
        return Reason.by(DoseData.get("chance-below-limit"), "range.too-much", text)
                .with("above limit", above, "probability");
    }

    static Reason peak(Effect effect) {
        double peakPct = effect.peakLoadPct().median();
        String text = String.format(
                Locale.ROOT,
                "Expected below where symptoms began: peak load %.2f %% %s rest against a limit of %.2f %% above it, which"
                        + " it passes in %.0f of 100 draws.",
                Math.abs(peakPct),
                peakPct < 0 ? "below" : "above",
                effect.limitPct(),
                100 * effect.probabilityAboveLimit());
        return Reason.by(DoseData.get("chance-below-limit"), "range.below-limit", text)
                .with("above limit", effect.probabilityAboveLimit(), "probability");
    }

    static Reason comfort() {
        return Reason.by(
                DoseData.get("comfort-share"), "range.comfort", "The range is kept short of its end, for comfort.");
    }

    /** Says if a joint is held at an easier angle than usual. */
    static Optional<Reason> eased(ExerciseCandidate candidate) {
        return candidate
                .ease()
                .filter(held -> candidate.base().angleDeg(held.joint(), held.limb()) != held.fromDeg())
                .map(held -> {
                    double angleDeg = candidate.base().angleDeg(held.joint(), held.limb());
                    String text = String.format(
                            Locale.ROOT,
                            "The %s is held at %.0f deg instead of %.0f, which leaves the nerve more room to slide.",
                            held.joint().key(),
                            angleDeg,
                            held.fromDeg());
                    return Reason.by(DoseData.get("ease-step"), "range.eased", text)
                            .with("held at", angleDeg, "deg");
                });
    }

    /** Why the range ends where it does. */
    static Reason end(Step chosen, RangeSearch.Found found) {
        if (!isLast(chosen, found)) {
            return Reason.practice(
                    "range.most-glide", "Of the ranges below the limit this one slides the nerve most at the site.");
        }
        if (found.stopped().isEmpty()) {
            return Reason.practice("range.whole", "The whole range of the exercise stays below the limit.");
        }
        if (!binding(chosen, found).isEmpty()) {
            return Reason.practice("range.guard", "A guard ends the range, whatever the model says.");
        }
        return Reason.by(
                DoseData.get("chance-below-limit"),
                "range.limit",
                "One step further the peak load would be too likely to reach the limit.");
    }

    /** The guards that ended the range; none if it ended for another reason. */
    static List<Reason> binding(Step chosen, RangeSearch.Found found) {
        return isLast(chosen, found) ? found.stopped().map(Step::forbidden).orElse(List.of()) : List.of();
    }

    private static boolean isLast(Step chosen, RangeSearch.Found found) {
        Step last = found.allowed().get(found.allowed().size() - 1);
        return chosen.end().equals(last.end());
    }

    static Reason notShown(Effect effect, Site site) {
        return Reason.by(
                        DoseData.get("least-glide"),
                        "range.no-movement-shown",
                        "No movement is shown at the %s: the exercise is for comfort.".formatted(site.name()))
                .with("glide", effect.glideMm().median(), "mm");
    }

    /** The glide is there in every draw, but not its direction. */
    static Reason directionUnsure(Effect effect, Site site) {
        String text = String.format(
                Locale.ROOT,
                "The model does not know which way the nerve moves at the %s: from start to end between %.1f mm towards"
                        + " the head and %.1f mm towards the foot.",
                site.name(),
                -effect.netGlideMm().low(),
                effect.netGlideMm().high());
        return Reason.by(DoseData.get("direction-known"), "range.direction-unsure", text)
                .with("lowest", effect.netGlideMm().low(), "mm")
                .with("highest", effect.netGlideMm().high(), "mm");
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
