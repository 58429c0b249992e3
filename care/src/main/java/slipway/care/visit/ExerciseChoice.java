package slipway.care.visit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.SiteWeight;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.reasoning.dose.Refusal;
import slipway.reasoning.irritability.Irritability;

/**
 * Which exercises a plan may hold: the therapist's picks where there are any; otherwise glides for the likeliest place
 * and companions that the findings call for, from the whole catalogue.
 */
final class ExerciseChoice {
    private static final String PICKED = "picked by the therapist; the nerve model gives no numbers for it";

    private final CaseFile file;
    private final Irritability level;
    private final Optional<LikeliestPlace> place;
    private final PersonLimits limits;
    private final Optional<GlideChoice> glides;

    ExerciseChoice(CaseFile file, List<SiteWeight> sites, Irritability level) {
        this.file = file;
        this.level = level;
        this.place = LikeliestPlace.of(sites);
        this.limits = new PersonLimits(file, level);
        this.glides = picked() ? Optional.empty() : place.map(at -> new GlideChoice(file, at, level, limits));
    }

    /** Whether the therapist has chosen. */
    boolean picked() {
        return !file.choices().exercises().isEmpty();
    }

    /** The glides that are put before the range design, by id, in order. */
    Map<String, Exercise> glides() {
        if (!picked()) {
            return glides.map(GlideChoice::contenders).orElse(Map.of());
        }
        var picks = new LinkedHashMap<String, Exercise>();
        for (String id : file.choices().exercises()) {
            Exercise exercise = Catalogue.bundled().get(id);
            if (Candidates.of(exercise).isPresent()) {
                picks.put(id, exercise);
            }
        }
        return picks;
    }

    /** How many of the glides are given at most; empty if the therapist has chosen. */
    OptionalInt most() {
        return picked() ? OptionalInt.empty() : OptionalInt.of(GlideChoice.most(level));
    }

    /** Glides that do not come before the range design, each with why. */
    List<Refusal> passedOver() {
        return glides.map(GlideChoice::passedOver).orElse(List.of());
    }

    /** Every pick of the therapist that cannot be designed. */
    List<Companion> pickedCompanions() {
        return file.choices().exercises().stream()
                .map(Catalogue.bundled()::get)
                .filter(exercise -> Candidates.of(exercise).isEmpty())
                .map(exercise -> new Companion(exercise, PICKED))
                .toList();
    }

    /**
     * What goes with the glides where the therapist has chosen nothing.
     *
     * @param room how many more exercises a plan may hold
     */
    CompanionChoice companions(int room) {
        return new CompanionChoice(file, place, limits, room);
    }
}
