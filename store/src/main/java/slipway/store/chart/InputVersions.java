package slipway.store.chart;

import java.util.EnumMap;
import java.util.Map;
import slipway.care.record.chart.ResultInputs;
import slipway.care.record.content.Section;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Versions of sections as JSON, by key of the section. */
final class InputVersions {
    private InputVersions() {}

    static ObjectNode json(ResultInputs inputs) {
        ObjectNode node = JsonMapper.shared().createObjectNode();
        inputs.versions().forEach((section, version) -> node.put(section.key(), version));
        return node;
    }

    static ResultInputs inputs(ObjectNode versions, String digest) {
        Map<Section, Long> map = new EnumMap<>(Section.class);
        for (String key : versions.propertyNames()) {
            map.put(Section.find(key).orElseThrow(), versions.path(key).longValue());
        }
        return new ResultInputs(map, digest);
    }
}
