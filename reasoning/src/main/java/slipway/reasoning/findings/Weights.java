package slipway.reasoning.findings;

import java.util.LinkedHashMap;
import java.util.Map;

/** Reads {@code name:weight name:weight} as data files write it. */
public final class Weights {
    private Weights() {}

    /**
     * The weights by name in the order written; a name alone weighs 1.
     *
     * @throws IllegalArgumentException if a weight is no number, or a name is given twice
     */
    public static Map<String, Double> parse(String text) {
        var weights = new LinkedHashMap<String, Double>();
        for (String part : text.isBlank() ? new String[0] : text.strip().split("\\s+")) {
            int colon = part.indexOf(':');
            String name = colon < 0 ? part : part.substring(0, colon);
            double weight = colon < 0 ? 1 : Double.parseDouble(part.substring(colon + 1));
            if (weights.put(name, weight) != null) {
                throw new IllegalArgumentException("%s is given twice in \"%s\"".formatted(name, text));
            }
        }
        return weights;
    }
}
