package slipway.study.world;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * A world: from what each hidden number of its people is drawn.
 *
 * @param plausible whether the program's assumptions roughly hold there
 * @param words what it is, for the report
 */
public record World(String id, boolean plausible, String words, Map<Trait, Spread> spreads) {
    public World {
        for (Trait trait : Trait.values()) {
            if (!spreads.containsKey(trait)) {
                throw new IllegalArgumentException("world %s: people.csv has no row %s".formatted(id, trait.id()));
            }
        }
        spreads = Collections.unmodifiableMap(new EnumMap<>(spreads));
    }

    /** From what a hidden number is drawn. */
    public Spread spread(Trait trait) {
        Spread spread = spreads.get(trait);
        if (spread == null) {
            throw new IllegalStateException("every world has " + trait.id());
        }
        return spread;
    }
}
