package slipway.care.record.assembly;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import slipway.care.casefile.CaseFiles;
import slipway.care.casefile.CaseParts;
import slipway.care.casefile.PartCheck;
import slipway.care.record.access.Clinic;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Episode;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.care.record.person.Person;
import slipway.care.record.person.PersonDetails;
import slipway.exercises.yaml.MistakesException;
import slipway.exercises.yaml.YamlText;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Puts a case together from what is kept. */
public final class CaseAssembly {
    /** Where the findings of a case come from that was entered here. */
    private static final String OWN_RECORD = "record of the clinic";

    private static final List<String> KEYS = Stream.concat(
                    Stream.of("format", "person", "side", "language"),
                    Arrays.stream(Section.values()).filter(Section::ofCase).flatMap(section -> section.keys().stream()))
            .toList();

    private CaseAssembly() {}

    /**
     * The case of a chart.
     *
     * @param clinic what the case says of the clinic unless it says something of its own
     * @param day for which the age is told
     */
    public static Assembly of(Chart chart, Clinic clinic, LocalDate day) {
        return of(tree(chart.person(), chart.episode(), clinic, chart.sections(), day));
    }

    /** The case of a tree, or everything that keeps it from being one. */
    public static Assembly of(ObjectNode tree) {
        PartCheck check = CaseParts.check(tree, KEYS);
        if (!check.isComplete()) {
            return new Assembly.Incomplete(check.mistakes(), check.missing());
        }
        String text = YamlText.of(tree);
        try {
            return new Assembly.Complete(CaseFiles.read(text.getBytes(StandardCharsets.UTF_8), "case"), text);
        } catch (MistakesException e) {
            return new Assembly.Incomplete(e.mistakes(), List.of());
        }
    }

    /**
     * What is there of a case, as the tree of a case file, keys in the order of the format. What was not entered is
     * absent.
     */
    public static ObjectNode tree(
            Person person, Episode episode, Clinic clinic, Map<Section, SectionRecord> sections, LocalDate day) {
        ObjectNode frame = content(sections, Section.FRAME);
        ObjectNode tree = JsonMapper.shared().createObjectNode();
        tree.put("format", 1);
        tree.put("id", frame.path("id").asString(episode.id()));
        frame(tree, frame, person.details());
        tree.set("person", person(person.details(), day));
        tree.put("side", episode.side().name().toLowerCase(Locale.ROOT));
        tree.put("language", person.details().language().code());
        tree.set("clinic", frame.has("clinic") ? frame.path("clinic") : clinic(clinic));
        for (Section section : Section.values()) {
            if (section != Section.FRAME && section.ofCase()) {
                tree.setAll(content(sections, section));
            }
        }
        return tree;
    }

    private static ObjectNode content(Map<Section, SectionRecord> sections, Section section) {
        SectionRecord kept = sections.get(section);
        return kept == null ? JsonMapper.shared().createObjectNode() : kept.content();
    }

    private static void frame(ObjectNode tree, ObjectNode frame, PersonDetails person) {
        if (frame.has("invented")) {
            for (String key : List.of("invented", "source", "inventedParts")) {
                if (frame.has(key)) {
                    tree.set(key, frame.path(key));
                }
            }
            return;
        }
        tree.put("invented", person.invented() ? "yes" : "no");
        if (!person.invented()) {
            tree.put("source", OWN_RECORD);
        }
    }

    private static ObjectNode person(PersonDetails details, LocalDate day) {
        ObjectNode person = JsonMapper.shared().createObjectNode();
        if (!details.name().equals(CaseSplit.NO_NAME)) {
            person.put("name", details.name());
        }
        details.age().ifPresent(age -> putNumber(person, "ageYears", age.yearsOn(day)));
        details.sex().ifPresent(sex -> person.put("sex", sex));
        details.statureCm().ifPresent(cm -> putNumber(person, "statureCm", cm));
        details.massKg().ifPresent(kg -> putNumber(person, "massKg", kg));
        return person;
    }

    /** Whole numbers without a point, as people write them. */
    private static void putNumber(ObjectNode node, String key, double value) {
        if (value == Math.rint(value)) {
            node.put(key, (long) value);
        } else {
            node.put(key, value);
        }
    }

    private static ObjectNode clinic(Clinic clinic) {
        ObjectNode node = JsonMapper.shared().createObjectNode();
        node.put("name", clinic.name()).put("setting", clinic.setting());
        if (!clinic.phone().isEmpty()) {
            node.put("phone", clinic.phone());
        }
        return node.put("emergencyNumber", clinic.emergencyNumber());
    }
}
