package slipway.reasoning.findings;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a word of an examination stands for.
 *
 * @param kind kind of item
 * @param key the canonical word
 * @param how how its members are to be read
 * @param members targets of the anatomical graph (for {@link How#REST}: other terms) with their weights; for
 *     {@link How#TARGET} the key itself with weight 1
 */
public record Term(FindingKind kind, String key, How how, Map<String, Double> members) {
    /** How a term relates to the targets of the graph. */
    public enum How {
        /** One target of the graph. */
        TARGET,
        /** One movement or patch, tested once: its fibres are the weighted mean of those of its members. */
        MEAN,
        /** A sweeping statement about whatever was not tested separately. */
        REST
    }

    public Term {
        if (members.isEmpty() || members.values().stream().anyMatch(weight -> !(weight > 0 && weight <= 1))) {
            throw new IllegalArgumentException(
                    "term %s: weights must be within 0 and 1, were %s".formatted(key, members));
        }
        members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }
}
