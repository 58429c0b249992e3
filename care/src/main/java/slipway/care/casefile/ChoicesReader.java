package slipway.care.casefile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.yaml.NearestWord;

/** Reads what the therapist picked and refused. */
final class ChoicesReader {
    private ChoicesReader() {}

    static Choices read(Fields root, Report report) {
        Fields choices = root.child("choices");
        List<String> wanted = choices.texts("exercises");
        wanted.forEach(id -> checkKnown(choices, id, report));
        var refused = new LinkedHashMap<String, String>();
        for (Fields entry : choices.list("refused")) {
            String id = entry.findText("exercise").orElse("");
            checkKnown(entry, id, report);
            if (refused.putIfAbsent(id, entry.findText("reason").orElse("")) != null) {
                report.add(entry, "refuses the same exercise twice, " + id);
            }
            if (wanted.contains(id)) {
                report.add(entry, "refuses an exercise that choices.exercises asks for, " + id);
            }
        }
        return new Choices(wanted, refused, ceilings(choices, refused, report), choices.texts("remarks"));
    }

    private static Map<String, HomeCeiling> ceilings(Fields choices, Map<String, String> refused, Report report) {
        var ceilings = new LinkedHashMap<String, HomeCeiling>();
        for (Fields entry : choices.list("ceilings")) {
            String id = entry.findText("exercise").orElse("");
            checkKnown(entry, id, report);
            if (refused.containsKey(id)) {
                report.add(entry, "sets a ceiling for an exercise that choices.refused refuses, " + id);
            }
            if (ceilings.putIfAbsent(id, ceiling(entry)) != null) {
                report.add(entry, "sets the ceiling of the same exercise twice, " + id);
            }
        }
        return ceilings;
    }

    private static HomeCeiling ceiling(Fields entry) {
        return new HomeCeiling(whole(entry, "repetitions"), whole(entry, "sessionsPerDay"));
    }

    /** What the schema does not let through looks absent. */
    private static OptionalInt whole(Fields entry, String key) {
        OptionalDouble value = entry.findNumber(key);
        return value.isPresent() && value.getAsDouble() >= 1
                ? OptionalInt.of((int) value.getAsDouble())
                : OptionalInt.empty();
    }

    private static void checkKnown(Fields at, String id, Report report) {
        if (Catalogue.bundled().find(id).isEmpty()) {
            report.add(
                    at,
                    NearestWord.complaint("exercise", id, Catalogue.bundled().ids()));
        }
    }
}
