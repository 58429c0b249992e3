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
 * @param ceilings the most that is allowed at home before the next visit, by exercise
 * @param remarks printed in the plan
 */
public record Choices(
        List<String> exercises, Map<String, String> refused, Map<String, HomeCeiling> ceilings, List<String> remarks) {
    public Choices {
        exercises = List.copyOf(exercises);
        refused = Collections.unmodifiableMap(new LinkedHashMap<>(refused));
        ceilings = Collections.unmodifiableMap(new LinkedHashMap<>(ceilings));
        remarks = List.copyOf(remarks);
    }
}
