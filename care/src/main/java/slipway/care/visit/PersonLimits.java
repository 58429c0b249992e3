package slipway.care.visit;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import slipway.care.CareData;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.SpineFindings;
import slipway.care.casefile.SpineFindings.Direction;
import slipway.care.casefile.TestKind;
import slipway.exercises.exercise.Exclusion;
import slipway.exercises.exercise.Exercise;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.screening.Answer;

/** What speaks against exercises in one person, each with what says so; what was not asked speaks against nothing. */
final class PersonLimits {
    private final CaseFile file;
    private final Map<Exclusion, String> because = new EnumMap<>(Exclusion.class);

    PersonLimits(CaseFile file, Irritability level) {
        this.file = file;
        file.episode().abilities().limits().forEach(limit -> because.put(limit, "ticked in the case file"));
        CareData.table("person-limits.csv").forEach(this::read);
        if (level == Irritability.HIGH) {
            because.put(Exclusion.HIGH_IRRITABILITY, "irritability is high");
        }
        if (!file.examination().spine().neckScreened().orElse(false)) {
            because.put(Exclusion.NECK_NOT_SCREENED, "the neck was not screened");
        }
        if (file.examination().tests().stream()
                .anyMatch(test -> test.test().name().equals(TestKind.CROSSED) && test.changed())) {
            because.put(Exclusion.CROSSED_RAISE_POSITIVE, "raising the other leg brought out the symptom");
        }
        worsens(Direction.EXTENSION, Exclusion.EXTENSION_WORSENS, "repeated bending backwards worsens");
        worsens(Direction.FLEXION, Exclusion.FLEXION_WORSENS, "repeated bending forwards worsens");
    }

    private void worsens(Direction direction, Exclusion exclusion, String why) {
        if (file.examination().spine().find(direction).equals(Optional.of(SpineFindings.Answer.WORSENS))) {
            because.put(exclusion, why);
        }
    }

    private void read(CSVRecord row) {
        List<String> keys = Arrays.asList(row.get("keys").split(" ", -1));
        boolean applies = switch (row.get("from")) {
            case "answer" ->
                keys.stream().anyMatch(key -> file.safety().answers().get(key) == Answer.YES);
            case "weak" -> AffectedSide.abnormal(file, FindingKind.STRENGTH, keys);
            case "positive" -> AffectedSide.abnormal(file, FindingKind.PROVOCATION, keys);
            default -> throw new IllegalStateException("person-limits.csv: unknown from " + row.get("from"));
        };
        if (applies) {
            Exclusion exclusion = Exclusion.find(row.get("exclusion"))
                    .orElseThrow(() ->
                            new IllegalStateException("person-limits.csv: unknown exclusion " + row.get("exclusion")));
            because.putIfAbsent(exclusion, row.get("because"));
        }
    }

    /** Why an exercise is not for this person by its own file; empty if nothing known speaks against it. */
    Optional<Reason> forbids(Exercise exercise) {
        return because.entrySet().stream()
                .filter(limit -> exercise.use().notFor().contains(limit.getKey()))
                .findFirst()
                .map(limit -> Reason.finding(
                        "choice.not-for",
                        "Its file says not with \"%s\": %s."
                                .formatted(limit.getKey().key(), limit.getValue())));
    }
}
