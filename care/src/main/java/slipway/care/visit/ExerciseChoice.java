package slipway.care.visit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import slipway.care.CareData;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.SiteWeight;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exclusion;
import slipway.exercises.exercise.Exercise;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.irritability.Irritability;

/**
 * Which exercises a plan begins with: the therapist's picks where there are any; otherwise the first glides for the
 * likeliest place, and companions that the findings call for.
 */
final class ExerciseChoice {
    private static final String WEAK = "weak";
    private static final String PICKED = "picked by the therapist; the nerve model gives no numbers for it";

    private final CaseFile file;
    private final Optional<CSVRecord> place;

    ExerciseChoice(CaseFile file, List<SiteWeight> sites) {
        this.file = file;
        this.place = sites.stream()
                .filter(site -> site.site().isPresent())
                .max(Comparator.comparingDouble(SiteWeight::probability))
                .flatMap(site -> row(site.name()));
    }

    private static Optional<CSVRecord> row(String site) {
        return CareData.table("first-glides.csv").stream()
                .filter(row -> Arrays.asList(row.get("sites").split(";", -1)).contains(site))
                .findFirst();
    }

    /** Whether the therapist has chosen. */
    boolean picked() {
        return !file.choices().exercises().isEmpty();
    }

    /** The glides that are put before the range design, by id, in order. */
    Map<String, Exercise> glides() {
        var chosen = new LinkedHashMap<String, Exercise>();
        for (Exercise exercise : named()) {
            if (Candidates.of(exercise).isPresent()) {
                chosen.put(exercise.id(), exercise);
            }
        }
        return chosen;
    }

    private List<Exercise> named() {
        List<String> picked = file.choices().exercises();
        boolean noStrap = file.episode().abilities().canHoldStrap().equals(Optional.of(false));
        String column = noStrap ? "withoutStrap" : "exercises";
        List<String> first =
                place.map(row -> Arrays.asList(row.get(column).split(" ", -1))).orElse(List.of());
        return (picked.isEmpty() ? first : picked)
                .stream()
                        .filter(id -> !file.choices().refused().containsKey(id))
                        .map(Catalogue.bundled()::get)
                        .toList();
    }

    /**
     * What goes with the glides: every pick of the therapist that cannot be designed, or, without picks, what the findings
     * call for.
     *
     * @param room how many more exercises a plan may hold
     */
    List<Companion> companions(Irritability level, int room) {
        if (picked()) {
            return named().stream()
                    .filter(exercise -> Candidates.of(exercise).isEmpty())
                    .map(exercise -> new Companion(exercise, PICKED))
                    .toList();
        }
        var companions = new ArrayList<Companion>();
        for (CSVRecord row : CareData.table("companions.csv")) {
            Exercise exercise = Catalogue.bundled().get(row.get("exercise"));
            if (companions.size() < room && applies(row) && allowed(exercise, level)) {
                companions.add(new Companion(exercise, row.get("because")));
            }
        }
        return companions;
    }

    private boolean applies(CSVRecord row) {
        String when = row.get("when");
        if (!when.equals(WEAK)) {
            return place.map(p -> p.get("indication").equals(when)).orElse(false);
        }
        List<String> targets = Arrays.asList(row.get("targets").split(" ", -1));
        return file.examination().findings().stream().anyMatch(finding -> weak(finding, targets));
    }

    private boolean weak(Finding finding, List<String> targets) {
        return finding.kind() == FindingKind.STRENGTH
                && finding.side() == file.episode().side()
                && finding.result().abnormal()
                && targets.contains(finding.target());
    }

    private boolean allowed(Exercise exercise, Irritability level) {
        boolean tooIrritable =
                level == Irritability.HIGH && exercise.use().notFor().contains(Exclusion.HIGH_IRRITABILITY);
        boolean sore = exercise.use().notFor().contains(Exclusion.GLUTEAL_PRESSURE)
                && !file.examination().pressureLimits().isEmpty();
        return !tooIrritable && !sore && !file.choices().refused().containsKey(exercise.id());
    }
}
