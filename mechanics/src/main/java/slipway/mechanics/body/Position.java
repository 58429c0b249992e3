package slipway.mechanics.body;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import slipway.mechanics.evidence.BundledTable;

/**
 * A named position of the body from which a test or an exercise starts, for example {@code lying knees bent}
 * ({@code positions.csv}; common practice, angles typical).
 *
 * @param name as in the file
 * @param posture its joint angles
 */
public record Position(String name, Posture posture) {
    private static final Map<String, Position> ALL = load();

    /** The position of this name. */
    public static Optional<Position> find(String name) {
        return Optional.ofNullable(ALL.get(name));
    }

    /**
     * The position of this name.
     *
     * @throws IllegalArgumentException naming the known positions
     */
    public static Position get(String name) {
        return find(name)
                .orElseThrow(() -> new IllegalArgumentException(
                        "unknown position \"%s\" (known: %s)".formatted(name, String.join(", ", ALL.keySet()))));
    }

    /** All positions by name, in the order of the file. */
    public static Map<String, Position> all() {
        return ALL;
    }

    private static Map<String, Position> load() {
        var all = new LinkedHashMap<String, Position>();
        for (var row : BundledTable.read("positions.csv")) {
            String name = row.get("position");
            all.put(name, new Position(name, Posture.parse(row.get("posture"))));
        }
        return Collections.unmodifiableMap(all);
    }
}
