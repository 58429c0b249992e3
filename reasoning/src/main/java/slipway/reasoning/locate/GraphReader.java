package slipway.reasoning.locate;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Weights;
import slipway.reasoning.screening.Region;

/** Reads the anatomical graph of a limb from {@code locate/nerves.csv} and {@code locate/targets.csv}. */
public final class GraphReader {
    private GraphReader() {}

    /** The graph of the leg or the arm. */
    public static Graph read(Region region) {
        List<Graph.Node> nodes = rows("locate/nerves.csv", region).stream()
                .map(row -> new Graph.Node(
                        row.get("node"),
                        optional(row.get("parent")),
                        optional(row.get("division")),
                        row.get("label"),
                        row.get("mark")))
                .toList();
        List<Graph.Target> targets = rows("locate/targets.csv", region).stream()
                .map(GraphReader::target)
                .toList();
        return new Graph(nodes, targets);
    }

    /** The rows of a table that belong to a limb. */
    static List<CSVRecord> rows(String name, Region region) {
        String key = region.name().toLowerCase(Locale.ROOT);
        return ReasoningData.table(name).stream()
                .filter(row -> row.get("region").equals(key))
                .toList();
    }

    static Optional<String> optional(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(text);
    }

    private static Graph.Target target(CSVRecord row) {
        String name = row.get("target");
        return new Graph.Target(
                FindingKind.find(row.get("kind"))
                        .orElseThrow(() -> new IllegalStateException("targets.csv: unknown kind of " + name)),
                name,
                Weights.parse(row.get("nerves")),
                Weights.parse(row.get("roots")),
                new Graph.Traits(Double.parseDouble(row.get("distal")), Double.parseDouble(row.get("umn"))),
                row.get("mark"));
    }
}
