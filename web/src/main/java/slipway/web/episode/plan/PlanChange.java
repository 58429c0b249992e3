package slipway.web.episode.plan;

import java.util.List;
import java.util.Map;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.chart.Stamp;
import slipway.care.record.content.Section;
import slipway.mechanics.parameters.FittedParameters;
import slipway.web.shell.Pages;

/**
 * What is not as it was when a plan was made.
 *
 * @param was the program and data that made it
 * @param now those of now
 * @param sections of the record that were written since
 */
public record PlanChange(Stamp was, Stamp now, List<Section> sections) {
    private static final int SHORT = 12;

    public PlanChange {
        sections = List.copyOf(sections);
    }

    static PlanChange of(Chart chart, PlanVersion version) {
        Map<Section, Long> then = version.plan().versions().versions();
        List<Section> sections = chart.sections().entrySet().stream()
                .filter(each -> each.getKey().ofCase())
                .filter(each -> each.getValue().version() != then.getOrDefault(each.getKey(), 0L))
                .map(Map.Entry::getKey)
                .toList();
        return new PlanChange(version.plan().stamp(), new Stamp(Pages.version(), FittedParameters.sha256()), sections);
    }

    public boolean program() {
        return !was.programVersion().equals(now.programVersion());
    }

    public boolean data() {
        return !was.dataDigest().equals(now.dataDigest());
    }

    /** Whether anything is not as it was. */
    public boolean any() {
        return program() || data() || !sections.isEmpty();
    }

    /** The beginning of a digest, enough to tell two apart. */
    public static String shortly(String digest) {
        return digest.length() <= SHORT ? digest : digest.substring(0, SHORT);
    }
}
