package slipway.care.casefile;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalInt;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.YamlDocument;
import slipway.exercises.yaml.YamlSchema;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.ScreeningInput;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Checks and reads parts of a case while the rest is still empty, with the schema and the rules that whole files are read
 * by.
 */
public final class CaseParts {
    private static final YamlSchema AS_FAR_AS_IT_GOES = YamlSchema.of(withoutRequired());

    private CaseParts() {}

    /**
     * Checks some top-level keys of a case.
     *
     * @param tree what is there of the case; values beside those of the keys are looked at for rules between values
     * @param keys the top-level keys to judge
     */
    public static PartCheck check(ObjectNode tree, Collection<String> keys) {
        YamlDocument document = document(tree);
        Report report = Report.byPath(document);
        report.addAll(AS_FAR_AS_IT_GOES.check(document));
        CaseReader.check(new Fields(document.root(), ""), report);
        return new PartCheck(
                report.mistakes().stream()
                        .filter(mistake -> keys.contains(topLevelKey(mistake)))
                        .map(mistake -> new Mistake(0, 0, mistake.path(), mistake.message()))
                        .distinct()
                        .toList(),
                missing(tree, keys));
    }

    /**
     * The neurological findings of both sides that stand under {@code examination}, in the order of the case file; empty
     * if there are none. A value that {@link #check} would call a mistake is left out.
     */
    public static List<Finding> findings(ObjectNode tree) {
        return FindingReader.read(fields(tree), Report.byPath(document(tree)));
    }

    /**
     * What the screening looks at, as far as it is there: a question without an answer counts as not asked. A clearance
     * that is not whole is left out, so that it clears nothing.
     *
     * @param ageYears age in whole years, if known; an age in the tree is not looked at
     */
    public static ScreeningInput screeningInput(ObjectNode tree, OptionalInt ageYears) {
        Report report = Report.byPath(document(tree));
        Fields root = fields(tree);
        Safety safety = SafetyReader.read(root, SafetyReader.readClearances(root, report));
        return new ScreeningInput(
                Region.LEG,
                safety.answers(),
                safety.clearances(),
                FindingReader.read(root, report),
                ageYears,
                safety.wells());
    }

    /** JSON is YAML, so the one reader serves both. */
    private static YamlDocument document(ObjectNode tree) {
        return YamlDocument.readAsFarAsPossible("case", tree.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static Fields fields(ObjectNode tree) {
        return new Fields(tree, "");
    }

    private static String topLevelKey(Mistake mistake) {
        if (mistake.path().isEmpty() && mistake.message().contains("\"source\"")) {
            return "source"; // the one rule between values that speaks of the file as a whole
        }
        return mistake.path().split("[.\\[]", 2)[0];
    }

    private static List<Mistake> missing(ObjectNode tree, Collection<String> keys) {
        var missing = new ArrayList<Mistake>();
        ObjectNode schema = CaseSchema.node();
        addMissing(schema.path("required"), tree, "", keys, missing);
        for (String key : keys) {
            if (tree.path(key).isObject()) {
                JsonNode required = schema.path("properties").path(key).path("required");
                List<String> all = texts(required);
                addMissing(required, tree.path(key), key + ".", all, missing);
            }
        }
        return missing;
    }

    private static void addMissing(
            JsonNode required, JsonNode in, String prefix, Collection<String> wanted, List<Mistake> missing) {
        for (String key : texts(required)) {
            if (wanted.contains(key) && !in.has(key)) {
                missing.add(new Mistake(0, 0, prefix + key, "is missing"));
            }
        }
    }

    private static List<String> texts(JsonNode list) {
        return list.valueStream().map(JsonNode::stringValue).toList();
    }

    /** The schema without what must be there, at the top and one level below; entries of lists must still be whole. */
    private static ObjectNode withoutRequired() {
        ObjectNode schema = CaseSchema.node().deepCopy();
        schema.remove("required");
        for (JsonNode property : schema.path("properties")) {
            if (property instanceof ObjectNode object) {
                object.remove("required");
            }
        }
        return schema;
    }
}
