package slipway.study.world;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import slipway.study.data.StudyData;

/** All worlds, in the order of {@code worlds.csv}. */
public final class Worlds {
    private static final List<World> ALL = load();

    private Worlds() {}

    /** All worlds, plausible ones first. */
    public static List<World> list() {
        return ALL;
    }

    /**
     * The world of this name.
     *
     * @throws IllegalArgumentException naming the known ones
     */
    public static World get(String id) {
        return ALL.stream()
                .filter(world -> world.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unknown world \"%s\" (known: %s)"
                        .formatted(
                                id,
                                String.join(", ", ALL.stream().map(World::id).toList()))));
    }

    private static List<World> load() {
        var changes = new LinkedHashMap<String, Map<Trait, Spread>>();
        var usual = new EnumMap<Trait, Spread>(Trait.class);
        for (CSVRecord row : StudyData.table("people.csv")) {
            usual.put(Trait.get(row.get("id")), Spread.of(row));
        }
        for (CSVRecord row : StudyData.table("worlds.csv")) {
            changes.put(row.get("world"), new EnumMap<>(usual));
        }
        for (CSVRecord row : StudyData.table("changes.csv")) {
            Map<Trait, Spread> world = changes.get(row.get("world"));
            if (world == null) {
                throw new IllegalStateException("changes.csv: unknown world " + row.get("world"));
            }
            world.put(Trait.get(row.get("id")), Spread.of(row));
        }
        return StudyData.table("worlds.csv").stream()
                .map(row -> new World(
                        row.get("world"),
                        row.get("kind").equals("plausible"),
                        row.get("words"),
                        changes.getOrDefault(row.get("world"), usual)))
                .toList();
    }
}
