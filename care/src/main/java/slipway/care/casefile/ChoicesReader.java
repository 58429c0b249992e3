package slipway.care.casefile;

import java.util.LinkedHashMap;
import java.util.List;

/** Reads what the therapist picked and refused. */
final class ChoicesReader {
    private ChoicesReader() {}

    static Choices read(Fields root, Report report) {
        Fields choices = root.child("choices");
        List<String> wanted = choices.texts("exercises");
        var refused = new LinkedHashMap<String, String>();
        for (Fields entry : choices.list("refused")) {
            String id = entry.findText("exercise").orElse("");
            if (refused.putIfAbsent(id, entry.findText("reason").orElse("")) != null) {
                report.add(entry, "refuses the same exercise twice, " + id);
            }
            if (wanted.contains(id)) {
                report.add(entry, "refuses an exercise that choices.exercises asks for, " + id);
            }
        }
        return new Choices(wanted, refused, choices.texts("remarks"));
    }
}
