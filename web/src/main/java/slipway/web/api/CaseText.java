package slipway.web.api;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.http.HttpStatus;
import slipway.care.record.SameJson;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.assembly.CaseSplit;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.YamlText;
import slipway.web.episode.Cases;
import tools.jackson.databind.node.ObjectNode;

/**
 * The case of a chart as it was read at one moment.
 *
 * @param tree what is there of the case
 * @param sections all of them, with their versions
 * @param version of the whole: changes with anything that the case shows
 */
record CaseText(ObjectNode tree, Map<Section, SectionRecord> sections, String version) {
    private static final int LETTERS = 24;
    /** Kept with the person and the episode, not with the case. */
    private static final Set<String> OF_THE_PERSON = Set.of("person", "side", "language");

    static CaseText of(Chart chart, Cases cases) {
        Map<Section, SectionRecord> sections = chart.sections();
        ObjectNode tree = cases.tree(chart);
        var versions = new ArrayList<Long>();
        sections.values().forEach(section -> versions.add(section.version()));
        return new CaseText(
                tree, sections, Cases.digest(versions + tree.toString()).substring(0, LETTERS));
    }

    /**
     * The whole case, for what needs one.
     *
     * @throws ProblemException 409 with everything that is missing
     */
    static Assembly.Complete whole(Chart chart, Cases cases) {
        Assembly assembly = cases.assemble(chart);
        if (assembly instanceof Assembly.Incomplete incomplete) {
            var all = new ArrayList<>(incomplete.mistakes());
            incomplete.missing().forEach(absent -> all.add(new Mistake(0, 0, absent.path(), "is missing")));
            throw new ProblemException(HttpStatus.CONFLICT, "the case is not whole yet", all);
        }
        return assembly.complete().orElseThrow();
    }

    String yaml() {
        return YamlText.of(tree);
    }

    Map<Section, Long> versions() {
        var versions = new EnumMap<Section, Long>(Section.class);
        sections.forEach((section, kept) -> versions.put(section, kept.version()));
        return versions;
    }

    /** What a new text of the case says of the person that the record says otherwise. */
    List<Mistake> aboutThePerson(ObjectNode sent) {
        var mistakes = new ArrayList<Mistake>();
        for (String key : OF_THE_PERSON) {
            if (!SameJson.same(sent.path(key), tree.path(key))) {
                mistakes.add(new Mistake(
                        0, 0, key, "must be as it was read: person and side are changed on their pages, not here"));
            }
        }
        mistakes.sort(null);
        return mistakes;
    }

    /** The sections of a new text that differ, each as a whole; one that is gone from the text is emptied. */
    Map<Section, ObjectNode> changes(ObjectNode sent) {
        Map<Section, ObjectNode> now = CaseSplit.sections(tree);
        Map<Section, ObjectNode> then = CaseSplit.sections(sent);
        var changes = new EnumMap<Section, ObjectNode>(Section.class);
        for (Section section : Section.values()) {
            if (!section.ofCase()) {
                continue;
            }
            ObjectNode before = now.getOrDefault(section, tree.objectNode());
            ObjectNode after = then.getOrDefault(section, tree.objectNode());
            if (!SameJson.same(before, after)) {
                changes.put(section, after);
            }
        }
        return changes;
    }
}
