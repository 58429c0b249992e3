package slipway.exchange.tables;

import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Everything that the record holds of a person in one episode, as JSON, for the person who asks to see it. Papers go with
 * their whole text; documents with kind, size and digest, their bytes being files of their own. The trail of who looked is
 * not part of it.
 */
public final class PersonRecord {
    private static final int FORMAT = 1;

    private PersonRecord() {}

    /** The record of a chart. Reading it is an act of whoever opened the chart. */
    public static ObjectNode of(Chart chart) {
        JsonMapper json = JsonMapper.shared();
        ObjectNode root = json.createObjectNode().put("format", FORMAT);
        root.set("person", json.valueToTree(chart.person()));
        root.set("episode", json.valueToTree(chart.episode()));
        ObjectNode sections = root.putObject("sections");
        for (Section section : Section.values()) {
            var kept = chart.section(section);
            sections.putObject(section.key()).put("version", kept.version()).set("content", kept.content());
        }
        ObjectNode visits = root.putObject("visits");
        visits.set("list", json.valueToTree(chart.visits().list()));
        visits.set("tries", json.valueToTree(chart.visits().tries()));
        root.set("plans", json.valueToTree(chart.plans().list()));
        root.set("decisions", json.valueToTree(chart.decisions().list()));
        root.set("measures", json.valueToTree(chart.measures().list()));
        root.set("goals", json.valueToTree(chart.goals().list()));
        root.set("checkIns", json.valueToTree(chart.checkIns().list()));
        root.set("alerts", json.valueToTree(chart.checkIns().alerts()));
        root.set("papers", json.valueToTree(chart.papers().list()));
        root.set("documents", json.valueToTree(chart.documents().list()));
        return root;
    }
}
