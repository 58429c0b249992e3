package slipway.care.visit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import slipway.care.CareData;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.SpineFindings;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Indication;
import slipway.exercises.exercise.KeyPose;
import slipway.exercises.exercise.Purpose;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.dose.KeptOut;
import slipway.reasoning.dose.Refusal;
import slipway.reasoning.findings.FindingKind;

/**
 * What goes with the glides: for each finding that calls for a companion one exercise of the catalogue, the usual first
 * one or, where something speaks against it, the easiest that is left; as many as there is room for.
 */
final class CompanionChoice {
    private static final String PLACE = "place";

    private final CaseFile file;
    private final Optional<LikeliestPlace> place;
    private final PersonLimits limits;
    private final List<Companion> chosen = new ArrayList<>();
    private final List<Refusal> passedOver = new ArrayList<>();

    CompanionChoice(CaseFile file, Optional<LikeliestPlace> place, PersonLimits limits, int room) {
        this.file = file;
        this.place = place;
        this.limits = limits;
        for (CSVRecord row : CareData.table("companions.csv")) {
            if (applies(row)) {
                choose(row, room);
            }
        }
    }

    List<Companion> chosen() {
        return chosen;
    }

    /** Those that a finding called for as well, each with the reason why another is given or none. */
    List<Refusal> passedOver() {
        return passedOver.stream().filter(refusal -> !given(refusal.id())).toList();
    }

    private boolean given(String id) {
        return chosen.stream().anyMatch(companion -> companion.exercise().id().equals(id));
    }

    private boolean applies(CSVRecord row) {
        List<String> targets = Arrays.asList(row.get("targets").split(" ", -1));
        return switch (row.get("when")) {
            case "weak" -> AffectedSide.abnormal(file, FindingKind.STRENGTH, targets);
            case "eases" -> eases(row.get("targets"));
            case PLACE ->
                place.map(p -> p.indication().key().equals(row.get("targets"))).orElse(false);
            default -> throw new IllegalStateException("companions.csv: unknown when " + row.get("when"));
        };
    }

    private boolean eases(String direction) {
        return file.examination()
                .spine()
                .find(SpineFindings.Direction.valueOf(direction.toUpperCase(Locale.ROOT)))
                .equals(Optional.of(SpineFindings.Answer.EASES));
    }

    private void choose(CSVRecord row, int room) {
        Optional<Exercise> taken = Optional.empty();
        for (Exercise exercise : contenders(row)) {
            Optional<Reason> against = against(exercise);
            if (given(exercise.id())) {
                taken = Optional.of(exercise);
            } else if (against.isPresent()) {
                passedOver.add(new Refusal(exercise.id(), against.get()));
            } else if (taken.isPresent()) {
                passedOver.add(new Refusal(exercise.id(), another(taken.get(), row)));
            } else if (chosen.size() >= room) {
                passedOver.add(new Refusal(exercise.id(), noRoom(row)));
            } else {
                chosen.add(new Companion(exercise, row.get("because")));
                taken = Optional.of(exercise);
            }
        }
    }

    /** The usual first one, then from the easiest rung up. */
    private static List<Exercise> contenders(CSVRecord row) {
        Purpose purpose = Purpose.find(row.get("purpose"))
                .orElseThrow(() -> new IllegalStateException("companions.csv: unknown purpose " + row.get("purpose")));
        Indication indication = Indication.find(row.get("indication"))
                .orElseThrow(
                        () -> new IllegalStateException("companions.csv: unknown indication " + row.get("indication")));
        Comparator<Exercise> usual =
                Comparator.comparing(exercise -> !exercise.id().equals(row.get("first")));
        return Catalogue.bundled().list().stream()
                .filter(exercise ->
                        exercise.purpose() == purpose && exercise.use().suits().contains(indication))
                .sorted(usual.thenComparing(Ladder::rung))
                .toList();
    }

    private Optional<Reason> against(Exercise exercise) {
        String refusal = file.choices().refused().get(exercise.id());
        if (refusal != null) {
            return Optional.of(Reason.finding("choice.refused", "The therapist refused it: " + refusal));
        }
        return limits.forbids(exercise).or(() -> provokes(exercise));
    }

    /** A companion too stays out of end positions that press on the place. */
    private Optional<Reason> provokes(Exercise exercise) {
        for (KeptOut end : DoseMapping.dose(file).keptOut()) {
            for (KeyPose pose : exercise.movement().poses()) {
                if (end.contains(pose.posture(java.util.Map.of()))) {
                    return Optional.of(Reason.finding("guard.end-position", end.why()));
                }
            }
        }
        return Optional.empty();
    }

    private static Reason another(Exercise taken, CSVRecord row) {
        return Reason.practice("choice.another", "%s is given already: %s.".formatted(taken.id(), row.get("because")));
    }

    private static Reason noRoom(CSVRecord row) {
        return Reason.practice(
                "choice.no-room",
                "Called for (%s), but the plan is full; people do few exercises better than many."
                        .formatted(row.get("because")));
    }
}
