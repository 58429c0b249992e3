package slipway.care.record.assembly;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.record.content.Section;
import slipway.care.record.person.Age;
import slipway.care.record.person.PersonDetails;
import slipway.exercises.yaml.YamlDocument;
import slipway.mechanics.body.Side;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A case file as it goes into the record. Comments of the file are not kept.
 *
 * @param caseId its short name
 */
public record CaseSplit(String caseId, PersonDetails person, Side side, Map<Section, ObjectNode> sections) {
    /** Stands where a case file names nobody; papers then show no name. */
    public static final String NO_NAME = "(no name)";

    public CaseSplit {
        sections = Collections.unmodifiableMap(new EnumMap<>(sections));
    }

    /**
     * Reads a case file into its parts.
     *
     * @param name of the file, for messages
     * @param day on which the age in it was told
     * @throws slipway.exercises.yaml.MistakesException with every mistake, as {@link CaseFiles#read}
     */
    public static CaseSplit read(byte[] bytes, String name, LocalDate day) {
        CaseFile file = CaseFiles.read(bytes, name);
        JsonNode root = YamlDocument.read(name, bytes).root();
        return new CaseSplit(file.id(), person(file, day), file.episode().side(), sections(root));
    }

    private static PersonDetails person(CaseFile file, LocalDate day) {
        return new PersonDetails(
                file.patient().name().orElse(NO_NAME),
                Optional.of(new Age.Told(file.patient().ageYears(), day)),
                file.patient().sex(),
                OptionalDouble.of(file.patient().statureCm()),
                file.patient().massKg(),
                file.episode().language(),
                Optional.empty(),
                Optional.empty(),
                file.provenance().invented());
    }

    /** The sections of the tree of a case file; one of which nothing is there is absent. */
    public static Map<Section, ObjectNode> sections(JsonNode root) {
        var sections = new EnumMap<Section, ObjectNode>(Section.class);
        for (String key : root.propertyNames()) {
            Section.holding(key)
                    .ifPresent(section -> sections.computeIfAbsent(
                                    section, none -> JsonMapper.shared().createObjectNode())
                            .set(key, root.path(key)));
        }
        return sections;
    }
}
