package slipway.care.record;

import java.util.Iterator;
import tools.jackson.databind.JsonNode;

/** Whether two JSON values say the same: keys have no order, 2 and 2.0 are one number. */
public final class SameJson {
    private SameJson() {}

    /** Whether both say the same, whatever the order of keys and the form of numbers. */
    public static boolean same(JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            return one.decimalValue().compareTo(other.decimalValue()) == 0;
        }
        if (one.isObject() && other.isObject()) {
            return one.size() == other.size() && one.propertyNames().stream().allMatch(key -> sameAt(key, one, other));
        }
        if (one.isArray() && other.isArray()) {
            return sameList(one, other);
        }
        return one.equals(other);
    }

    private static boolean sameAt(String key, JsonNode one, JsonNode other) {
        return other.has(key) && same(one.path(key), other.path(key));
    }

    private static boolean sameList(JsonNode one, JsonNode other) {
        Iterator<JsonNode> rest = other.iterator();
        return one.size() == other.size() && one.valueStream().allMatch(value -> same(value, rest.next()));
    }
}
