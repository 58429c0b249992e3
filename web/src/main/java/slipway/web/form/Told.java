package slipway.web.form;

import tools.jackson.databind.JsonNode;

/**
 * What a person told about a field, shown beside it. It is not what the field holds.
 *
 * @param by who told it, when and how
 * @param words what was told
 * @param value what the field would hold
 * @param why reason on record for saying otherwise; blank if there is none
 */
public record Told(String by, String words, JsonNode value, String why) {}
