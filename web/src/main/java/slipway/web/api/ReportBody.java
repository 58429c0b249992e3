package slipway.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.springframework.http.HttpStatus;
import slipway.care.follow.CheckInFile;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.YamlDocument;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A report in JSON: an object with the columns of the file of reports as keys. */
final class ReportBody {
    private static final int LONGEST = 200;
    private static final Set<String> COLUMNS = Set.copyOf(CheckInFile.columns());

    private ReportBody() {}

    /**
     * The report, every value as text.
     *
     * @throws slipway.exercises.yaml.MistakesException if it is no object of such a form
     * @throws ProblemException 422 if a key or value cannot stand, or the id may not
     */
    static ObjectNode read(byte[] bytes) {
        // The reader of YAML takes JSON too, refuses a key given twice, and tells line and column.
        YamlDocument document = YamlDocument.read("report", bytes);
        var mistakes = new ArrayList<Mistake>();
        ObjectNode report = ((ObjectNode) document.root()).objectNode();
        document.root().properties().forEach(entry -> {
            String pointer = "/" + entry.getKey().replace("~", "~0").replace("/", "~1");
            if (!COLUMNS.contains(entry.getKey())) {
                mistakes.add(document.mistake(pointer, "is no key of a report; there are " + CheckInFile.columns()));
            } else if (!isShort(entry.getValue())) {
                mistakes.add(document.mistake(pointer, "must be a text or number of at most 200 characters"));
            } else {
                report.put(entry.getKey(), entry.getValue().asString());
            }
        });
        if (!report.path("checkin_id").asString("").matches("[A-Za-z0-9-]{8,64}")) {
            mistakes.add(document.mistake(
                    "/checkin_id", "must be 8 to 64 letters, digits or hyphens, made by whoever reports"));
        }
        if (!mistakes.isEmpty() && !tellsSign(report)) {
            throw new ProblemException(
                    HttpStatus.UNPROCESSABLE_CONTENT, "the report has mistakes; nothing was kept", mistakes);
        }
        return withId(report);
    }

    /** A danger sign is never lost for its id. */
    private static ObjectNode withId(ObjectNode report) {
        if (!report.path("checkin_id").asString("").matches("[A-Za-z0-9-]{8,64}")) {
            report.put("checkin_id", java.util.UUID.randomUUID().toString());
        }
        return report;
    }

    private static boolean isShort(JsonNode value) {
        return (value.isString() || value.isNumber()) && value.asString().length() <= LONGEST;
    }

    static boolean tellsSign(ObjectNode report) {
        return List.of("emergency", "new_weakness", "still_numb").stream()
                .map(key -> report.path(key).asString("").strip())
                .anyMatch(word -> !word.isEmpty() && !word.equals("no"));
    }

    /** Mistakes without the line of the file that the report never was. */
    static List<Mistake> inJson(List<Mistake> mistakes) {
        return mistakes.stream()
                .map(each -> new Mistake(0, 0, each.path(), each.message()))
                .toList();
    }

    static void add(ArrayNode list, List<Mistake> mistakes) {
        inJson(mistakes)
                .forEach(each -> list.addObject().put("path", each.path()).put("message", each.message()));
    }
}
