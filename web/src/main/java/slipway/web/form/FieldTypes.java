package slipway.web.form;

import slipway.care.casefile.CaseSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the schema of case files says about the type of a field. */
final class FieldTypes {
    private static final JsonNode SCHEMA = JsonMapper.shared().readTree(CaseSchema.text());

    private FieldTypes() {}

    /** Type of a field. */
    enum Type {
        NUMBER,
        LIST,
        TEXT
    }

    static Type of(FieldPath path) {
        JsonNode at = SCHEMA;
        for (FieldPath.Step step : path.steps()) {
            at = resolved(down(resolved(at), step));
        }
        String type = at.path("type").asString("");
        return switch (type) {
            case "number", "integer" -> Type.NUMBER;
            case "array" -> Type.LIST;
            default -> Type.TEXT;
        };
    }

    private static JsonNode down(JsonNode schema, FieldPath.Step step) {
        if (step instanceof FieldPath.Key key) {
            JsonNode named = schema.path("properties").path(key.name());
            return named.isMissingNode() ? schema.path("additionalProperties") : named;
        }
        return schema.path("items");
    }

    private static JsonNode resolved(JsonNode schema) {
        JsonNode at = schema;
        while (at.path("$ref").isString()) {
            at = SCHEMA.at(at.path("$ref").stringValue().substring(1));
        }
        return at;
    }
}
