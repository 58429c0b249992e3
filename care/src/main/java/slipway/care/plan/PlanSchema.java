package slipway.care.plan;

import java.util.List;
import slipway.care.CareData;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.YamlDocument;
import slipway.exercises.yaml.YamlSchema;
import tools.jackson.databind.json.JsonMapper;

/** The JSON schema (draft 2020-12) of the plan that {@code slipway plan} writes. */
public final class PlanSchema {
    private static final String TEXT = CareData.text("schema/plan.schema.json");

    private PlanSchema() {}

    /** The schema as JSON text. */
    public static String text() {
        return TEXT;
    }

    /**
     * What in a plan breaks the schema; empty if nothing does.
     *
     * @param json the plan as JSON text in UTF-8
     * @param name its name, for messages
     */
    public static List<Mistake> check(byte[] json, String name) {
        // JSON is YAML, so the one reader serves both and gives places.
        return YamlSchema.of(JsonMapper.shared().readTree(TEXT)).check(YamlDocument.read(name, json));
    }
}
