package slipway.care.casefile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the therapist picked.
 *
 * @param exercises ids wanted; empty leaves the choice to the program
 * @param refused ids refused, each with the reason
 * @param remarks printed in the plan
 */
public record Choices(List<String> exercises, Map<String, String> refused, List<String> remarks) {
    public Choices {
        exercises = List.copyOf(exercises);
        refused = Collections.unmodifiableMap(new LinkedHashMap<>(refused));
        remarks = List.copyOf(remarks);
    }
}
