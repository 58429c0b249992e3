package slipway.care.casefile;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipway.exercises.exercise.Exclusion;
import slipway.exercises.exercise.Language;
import slipway.exercises.yaml.Pointers;
import slipway.mechanics.body.Position;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.screening.Clearance;

/** Puts a case together from its parts. */
final class CaseReader {
    private static final String USUAL_REST = "lying knees bent";

    private CaseReader() {}

    /** What the readers make of a file, as far as they get. */
    private record Parts(
            RangesOfMotion ranges,
            List<TestEntry> tests,
            List<PressureLimit> limits,
            List<Finding> findings,
            List<SiteWeight> sites,
            List<Clearance> clearances,
            Choices choices) {}

    /** Runs every rule between values, for what it reports. */
    static void check(Fields root, Report report) {
        parts(root, report);
    }

    private static Parts parts(Fields root, Report report) {
        RangesOfMotion ranges = RangeReader.read(root, report);
        List<TestEntry> tests = TestReader.read(root, report);
        List<PressureLimit> limits = RangeReader.readPressureLimits(root, report);
        List<Finding> findings = FindingReader.read(root, report);
        List<SiteWeight> sites = SiteReader.read(root, report);
        List<Clearance> clearances = SafetyReader.readClearances(root, report);
        RaiseChecks.check(root, tests, findings, report);
        checkProvenance(root, report);
        return new Parts(ranges, tests, limits, findings, sites, clearances, ChoicesReader.read(root, report));
    }

    static CaseFile read(Fields root, Report report) {
        Parts parts = parts(root, report);
        // From here on every required value is there and of its type.
        report.throwIfAny();
        var examination = new Examination(
                irritability(root.child("irritability")),
                parts.ranges(),
                parts.tests(),
                parts.limits(),
                root.findNumber("sittingMinutes"),
                root.texts("comfortablePositions").stream().map(Position::get).toList(),
                Position.get(root.findText("restPosture").orElse(USUAL_REST)),
                parts.findings(),
                spine(root.child("spine")));
        return new CaseFile(
                root.text("id"),
                new Provenance(root.yesNo("invented"), root.findText("source"), root.texts("inventedParts")),
                patient(root.child("person")),
                episode(root),
                SafetyReader.read(root, parts.clearances()),
                examination,
                parts.sites(),
                parts.choices());
    }

    private static void checkProvenance(Fields root, Report report) {
        if (root.findYesNo("invented").equals(Optional.of(false)) && !root.has("source")) {
            report.add(root, "the key \"source\" is missing; it is required when the person is not invented");
        }
        for (Fields part : root.list("inventedParts")) {
            String path = part.asText().orElse("");
            if (!path.isEmpty() && root.node().at(Pointers.fromShown(path)).isMissingNode()) {
                report.add(part, "must be the path of a value in this file, was \"%s\"".formatted(path));
            }
        }
    }

    private static Patient patient(Fields person) {
        return new Patient(
                person.findText("name"),
                person.number("ageYears"),
                person.findText("sex"),
                person.number("statureCm"),
                person.findNumber("massKg"));
    }

    private static Episode episode(Fields root) {
        Fields clinic = root.child("clinic");
        Fields abilities = root.child("abilities");
        return new Episode(
                root.side("side"),
                Language.find(root.text("language")).orElseThrow(),
                new Clinic(
                        clinic.findText("name"),
                        clinic.text("setting"),
                        clinic.findText("phone"),
                        clinic.text("emergencyNumber")),
                history(root.child("history")),
                abilities(abilities));
    }

    private static Abilities abilities(Fields abilities) {
        var limits = EnumSet.noneOf(Exclusion.class);
        abilities.texts("limits").forEach(text -> Exclusion.find(text).ifPresent(limits::add));
        return new Abilities(abilities.findYesNo("canLieOnFloor"), abilities.findYesNo("canHoldStrap"), limits);
    }

    private static SpineFindings spine(Fields spine) {
        var repeated = new EnumMap<SpineFindings.Direction, SpineFindings.Answer>(SpineFindings.Direction.class);
        Fields movements = spine.child("repeatedMovements");
        for (SpineFindings.Direction direction : SpineFindings.Direction.values()) {
            movements
                    .findText(direction.name().toLowerCase(Locale.ROOT))
                    .map(text -> SpineFindings.Answer.valueOf(text.toUpperCase(Locale.ROOT)))
                    .ifPresent(answer -> repeated.put(direction, answer));
        }
        return new SpineFindings(spine.findYesNo("neckScreened"), repeated);
    }

    private static History history(Fields history) {
        var told = new LinkedHashMap<String, String>();
        for (String key : history.keys()) {
            history.findText(key).ifPresent(text -> told.put(key, text.strip()));
        }
        return new History(history.findNumber("durationWeeks"), history.texts("habits"), told);
    }

    private static IrritabilityReport irritability(Fields report) {
        return new IrritabilityReport(
                report.findNumber("worstPain"),
                report.findNumber("usualPain"),
                report.findNumber("restPain"),
                report.findNumber("nightPain"),
                report.findNumber("settleMinutes"),
                report.findYesNo("provokedByTrivialActivity"),
                report.findYesNo("onlyAtEndRange"),
                report.findText("judgement"));
    }
}
