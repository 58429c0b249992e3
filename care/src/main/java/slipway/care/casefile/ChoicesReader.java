package slipway.care.casefile;

import java.util.LinkedHashMap;
import java.util.List;
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
        return new Choices(wanted, refused, choices.texts("remarks"));
    }

    private static void checkKnown(Fields at, String id, Report report) {
        if (Catalogue.bundled().find(id).isEmpty()) {
            report.add(
                    at,
                    NearestWord.complaint("exercise", id, Catalogue.bundled().ids()));
        }
    }
}
