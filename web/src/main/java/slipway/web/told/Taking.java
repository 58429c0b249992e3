package slipway.web.told;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Verdict;
import slipway.care.record.content.Section;
import tools.jackson.databind.node.ObjectNode;

/** Takes what was told into a section, each answer or all of them. */
public final class Taking {
    /** Takes every answer that the section has a field for. */
    public static final String ALL = "*";

    private Taking() {}

    /**
     * Puts what was told into content that is about to be saved.
     *
     * @param take path of a field, or {@link #ALL}
     * @return the paths that were filled; empty if nothing was told there
     */
    public static List<String> into(ObjectNode content, Section section, String take, Chart chart) {
        Map<String, Said> said = Telling.of(chart).map(Telling::said).orElse(Map.of());
        List<String> paths = said.keySet().stream()
                .filter(path -> section.keys().contains(top(path)))
                .filter(path -> take.equals(ALL) || take.equals(path))
                .toList();
        for (String path : paths) {
            content.withObject("/" + top(path))
                    .set(
                            path.substring(path.indexOf('.') + 1),
                            Objects.requireNonNull(said.get(path)).value());
        }
        return paths;
    }

    /** Notes that a therapist took what was told. */
    public static void note(Chart chart, Section section, List<String> paths) {
        chart.decisions().add("intake/" + section.key(), Verdict.ACCEPT, String.join(", ", paths), "", "");
    }

    private static String top(String path) {
        return path.substring(0, path.indexOf('.'));
    }
}
