package slipway.web.told;

import tools.jackson.databind.JsonNode;

/**
 * What an answer would say in the record.
 *
 * @param words for whoever reads it beside the field
 * @param value what the field would hold
 */
public record Said(String words, JsonNode value) {}
