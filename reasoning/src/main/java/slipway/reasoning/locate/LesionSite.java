package slipway.reasoning.locate;

import java.util.List;
import java.util.Map;
import slipway.reasoning.findings.Weights;
import slipway.reasoning.screening.Region;

/**
 * A place where a nerve can be compromised, or something that is mistaken for it.
 *
 * @param name as in {@code locate/sites.csv}
 * @param scored its name in lists of published cases; mimics and upper motor neurone count there as {@code not_nerve}
 * @param kind class that decides its severities
 * @param nodes roots or nodes of the graph that a lesion there takes
 * @param adjacent what is often caught along, with its share of the severity; a muscle with {@code @} is weak through pain
 * @param sensitivity chance that the nerve is mechanosensitive
 * @param label plain name
 */
public record LesionSite(
        String name,
        String scored,
        String kind,
        List<String> nodes,
        Map<String, Double> adjacent,
        Sensitivity sensitivity,
        String label) {
    /**
     * Chance that neural tests are positive because the nerve is mechanosensitive.
     *
     * @param posterior of the nerve at the back of the leg; in the arm, of the tested nerve
     * @param anterior of the nerve at the front of the thigh
     */
    public record Sensitivity(double posterior, double anterior) {
        public Sensitivity {
            if (!(posterior > 0 && posterior < 1) || !(anterior > 0 && anterior < 1)) {
                throw new IllegalArgumentException(
                        "sensitivity must be between 0 and 1, was %s and %s".formatted(posterior, anterior));
            }
        }
    }

    public LesionSite {
        nodes = List.copyOf(nodes);
        adjacent = Map.copyOf(adjacent);
    }

    /** Whether a lesion there is of both sides by its nature. */
    public boolean bilateral() {
        return kind.equals("cauda") || kind.equals("polyneuropathy");
    }

    /** Whether it is something else than a nerve. */
    public boolean mimic() {
        return kind.equals("mimic");
    }

    /** All sites of a limb in the order of the file. */
    public static List<LesionSite> list(Region region) {
        return GraphReader.rows("locate/sites.csv", region).stream()
                .map(row -> new LesionSite(
                        row.get("site"),
                        row.get("scored"),
                        row.get("class"),
                        List.copyOf(Weights.parse(row.get("nodes")).keySet()),
                        Weights.parse(row.get("adjacent")),
                        new Sensitivity(
                                Double.parseDouble(row.get("posterior")), Double.parseDouble(row.get("anterior"))),
                        row.get("label")))
                .toList();
    }
}
