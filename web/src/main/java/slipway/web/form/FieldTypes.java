package slipway.web.form;

import slipway.care.casefile.CaseSchema;
import slipway.care.record.content.Paperwork;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the schemas of case files and of paperwork say about the type of a field. */
final class FieldTypes {
    private static final JsonNode CASE = JsonMapper.shared().readTree(CaseSchema.text());
    private static final JsonNode PAPERWORK = Paperwork.schema();

    private FieldTypes() {}

    /** Type of a field. */
    enum Type {
        NUMBER,
        LIST,
        TEXT
    }

    static Type of(FieldPath path) {
        boolean paperwork =
                path.steps().get(0) instanceof FieldPath.Key key && key.name().equals(Paperwork.KEY);
        JsonNode schema = paperwork ? PAPERWORK : CASE;
        JsonNode at = schema;
        for (FieldPath.Step step : path.steps()) {
            at = resolved(schema, down(resolved(schema, at), step));
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

    private static JsonNode resolved(JsonNode root, JsonNode schema) {
        JsonNode at = schema;
        while (at.path("$ref").isString()) {
            at = root.at(at.path("$ref").stringValue().substring(1));
        }
        return at;
    }
}
