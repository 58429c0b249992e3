package slipway.care.visit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import slipway.care.casefile.CaseFile;
import slipway.care.loads.GlideRanking;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Indication;
import slipway.exercises.exercise.Purpose;
import slipway.exercises.exercise.Surface;
import slipway.mechanics.body.Prop;
import slipway.mechanics.body.Support;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.dose.ExerciseCandidate;
import slipway.reasoning.dose.Refusal;
import slipway.reasoning.irritability.Irritability;

/**
 * Which glides of the whole catalogue are put before the range design, the more wanted first, and why the others are
 * not. With high irritability the easiest rung comes first; with moderate the glide with most slide for its load, with
 * low the one with most slide at the likeliest place of a standard body. The range design goes on from there: position,
 * then the joint furthest from the place, one glide for each leading joint.
 */
final class GlideChoice {
    private static final Coefficients DATA = Coefficients.load("visit.csv");

    private final CaseFile file;
    private final LikeliestPlace place;
    private final Irritability level;
    private final PersonLimits limits;
    private final Map<String, Exercise> contenders = new LinkedHashMap<>();
    private final List<Refusal> passedOver = new ArrayList<>();

    GlideChoice(CaseFile file, LikeliestPlace place, Irritability level, PersonLimits limits) {
        this.file = file;
        this.place = place;
        this.level = level;
        this.limits = limits;
        var fitting = new ArrayList<Exercise>();
        for (Exercise exercise : Catalogue.bundled().list()) {
            if (exercise.purpose() == Purpose.GLIDE) {
                against(exercise)
                        .ifPresentOrElse(
                                reason -> passedOver.add(new Refusal(exercise.id(), reason)),
                                () -> fitting.add(exercise));
            }
        }
        fitting.sort(order());
        fitting.forEach(exercise -> contenders.put(exercise.id(), exercise));
    }

    /** The glides that the range design may choose from, by id, the more wanted first. */
    Map<String, Exercise> contenders() {
        return contenders;
    }

    /** The others, each with the first reason that speaks against it. */
    List<Refusal> passedOver() {
        return passedOver;
    }

    /** How many of them a first plan holds at most. */
    static int most(Irritability level) {
        return (int) DATA.value(level == Irritability.HIGH ? "glides-at-first-high" : "glides-at-first");
    }

    private Comparator<Exercise> order() {
        GlideRanking ranking = GlideRanking.at(place.site());
        Comparator<Exercise> modelled = Comparator.comparing(ranking::leavesOutJoints);
        Comparator<Exercise> known = modelled.thenComparing(exercise -> !ranking.knowsDirection(exercise));
        return switch (level) {
            case HIGH -> modelled.thenComparing(Ladder::rung).thenComparing(most(ranking, ranking::glideToLoad));
            case MODERATE -> known.thenComparing(most(ranking, ranking::glideToLoad));
            case LOW -> known.thenComparing(most(ranking, ranking::glideMm));
        };
    }

    /** The largest value first; what shows no movement counts as none and stays in the order of the catalogue. */
    private static Comparator<Exercise> most(GlideRanking ranking, ToDoubleFunction<Exercise> value) {
        return Comparator.<Exercise>comparingDouble(
                        exercise -> ranking.showsMovement(exercise) ? value.applyAsDouble(exercise) : 0)
                .reversed();
    }

    private Optional<Reason> against(Exercise exercise) {
        String refusal = file.choices().refused().get(exercise.id());
        if (refusal != null) {
            return Optional.of(Reason.finding("choice.refused", "The therapist refused it: " + refusal));
        }
        if (!suits(exercise)) {
            return Optional.of(Reason.practice(
                    "choice.other-place", "It is made for another place than a %s.".formatted(place.words())));
        }
        Optional<ExerciseCandidate> candidate = Candidates.of(exercise);
        if (candidate.isEmpty()) {
            return Optional.of(
                    Reason.practice("choice.not-designed", "It has no range that the nerve model could choose."));
        }
        if (candidate.get().purpose() == slipway.reasoning.dose.Purpose.TENSION) {
            return Optional.of(Reason.practice(
                    "start.both-ends", "Loading both ends together is no start; it comes late on the ladder."));
        }
        if (GlideRanking.leadNotModelled(candidate.get())) {
            return Optional.of(
                    Reason.practice("choice.lead-not-modelled", "The nerve model does not know its leading joint."));
        }
        return limits.forbids(exercise).or(() -> byHome(exercise));
    }

    private boolean suits(Exercise exercise) {
        boolean calm = level == Irritability.HIGH && exercise.use().suits().contains(Indication.HIGH_IRRITABILITY);
        boolean here = exercise.use().suits().contains(place.indication());
        boolean onTheWay = exercise.use().modelledTracts().stream().anyMatch(place.site()::liesOn);
        return here || (calm && onTheWay);
    }

    /** What the person can't do at home. */
    private Optional<Reason> byHome(Exercise exercise) {
        var abilities = file.episode().abilities();
        if (abilities.canHoldStrap().equals(Optional.of(false))
                && exercise.setting().needs(Prop.STRAP)) {
            return Optional.of(Reason.finding("choice.no-strap", "A strap cannot be held."));
        }
        if (abilities.canLieOnFloor().equals(Optional.of(false))
                && exercise.setting().surfaces().equals(List.of(Surface.FLOOR))) {
            return Optional.of(Reason.finding("choice.no-floor", "It needs the floor, which cannot be used."));
        }
        var minutes = file.examination().sittingMinutes();
        if (exercise.setting().support() == Support.SITTING
                && minutes.isPresent()
                && minutes.getAsDouble() < DATA.value("least-sitting-minutes")) {
            return Optional.of(Reason.by(
                            DATA.get("least-sitting-minutes"),
                            "choice.sitting",
                            "Sitting is borne for %.0f minutes only.".formatted(minutes.getAsDouble()))
                    .with("sitting", minutes.getAsDouble(), "min"));
        }
        return Optional.empty();
    }
}
