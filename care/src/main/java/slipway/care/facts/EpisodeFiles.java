package slipway.care.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipway.care.CareData;
import slipway.care.casefile.CaseFile;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;
import slipway.exercises.yaml.YamlDocument;
import slipway.exercises.yaml.YamlSchema;
import slipway.reasoning.deadlines.PaperRule;
import slipway.reasoning.measures.Measure;
import slipway.reasoning.measures.Measures;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Reads episode files. */
public final class EpisodeFiles {
    private static final ObjectNode SCHEMA = schema();
    private static final YamlSchema CHECK = YamlSchema.of(SCHEMA);

    private EpisodeFiles() {}

    /** The schema as JSON text. */
    public static String schemaText() {
        return SCHEMA.toPrettyString() + "\n";
    }

    /**
     * Reads an episode file.
     *
     * @param file the case that it must belong to
     * @param name of the file, for messages
     * @throws MistakesException with every mistake, each with line, column, path, rule and what was found
     */
    public static EpisodeFacts read(byte[] bytes, String name, CaseFile file) {
        YamlDocument document = YamlDocument.readAsFarAsPossible(name, bytes);
        List<Mistake> mistakes = new ArrayList<>(CHECK.check(document));
        if (mistakes.isEmpty()) {
            // Only a file that keeps the schema can be read on: then every value has its type.
            var reader = new EpisodeReader(document, mistakes);
            Optional<EpisodeFacts> facts = reader.read(file);
            if (facts.isPresent() && mistakes.isEmpty()) {
                return facts.get();
            }
        }
        throw new MistakesException(name, mistakes);
    }

    private static ObjectNode schema() {
        var schema = (ObjectNode) JsonMapper.shared().readTree(CareData.text("schema/episode.schema.json"));
        words(
                schema,
                "/properties/measures/items/properties/measure",
                Measures.bundled().list().stream().map(Measure::id));
        words(
                schema,
                "/properties/payer",
                PaperRule.bundled().stream().map(PaperRule::payer).distinct());
        return schema;
    }

    private static void words(ObjectNode schema, String pointer, Stream<String> words) {
        var list = ((ObjectNode) schema.at(pointer)).putArray("enum");
        words.forEach(list::add);
    }
}
