package slipway.care.reports;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.dataformat.yaml.YAMLFactory;

/** Reads lists of published cases. */
public final class PublishedCases {
    private PublishedCases() {}

    /** Whether a file holds a list (many cases) rather than a mapping (one person). */
    public static boolean isList(InputStream file) throws IOException {
        try (JsonParser parser = parser(file)) {
            return parser.nextToken() == JsonToken.START_ARRAY;
        } catch (JacksonException e) {
            return false;
        }
    }

    /**
     * Hands over one case after another. Cases after a mistake are read too, so that all mistakes are known at the end.
     *
     * @param source name of the file, for messages
     * @throws CaseMistakes if anything in the file cannot be true or cannot be read
     */
    public static void read(String source, InputStream file, Consumer<PublishedCase> taker) throws IOException {
        var mistakes = new ArrayList<String>();
        var ids = new HashSet<String>();
        try (JsonParser parser = parser(file)) {
            if (parser.nextToken() != JsonToken.START_ARRAY) {
                throw new CaseMistakes(source, List.of("line 1: a list of cases was expected"));
            }
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                Located item = Located.read(parser);
                if (item instanceof Located.Mapping mapping) {
                    one(mapping, ids, mistakes, taker);
                } else {
                    mistakes.add(item.place() + ": a case must be a mapping");
                }
            }
        } catch (JacksonException e) {
            var at = e.getLocation();
            mistakes.add("line %d, column %d: not readable as YAML"
                    .formatted(at == null ? 1 : at.getLineNr(), at == null ? 1 : at.getColumnNr()));
        }
        if (!mistakes.isEmpty()) {
            throw new CaseMistakes(source, mistakes);
        }
    }

    /** All cases of a file at once. */
    public static List<PublishedCase> readAll(String source, InputStream file) throws IOException {
        var cases = new ArrayList<PublishedCase>();
        read(source, file, cases::add);
        return cases;
    }

    /** The cases that ship with the program, with their sources; wording is not the sources'. */
    public static List<PublishedCase> bundled() throws IOException {
        try (InputStream file = PublishedCases.class.getResourceAsStream("published-cases.yaml")) {
            if (file == null) {
                throw new IllegalStateException("the program was packaged without its published cases");
            }
            return readAll("published-cases.yaml", file);
        }
    }

    private static void one(
            Located.Mapping mapping, Set<String> ids, List<String> mistakes, Consumer<PublishedCase> taker) {
        int before = mistakes.size();
        PublishedCase read = new CaseReader(mapping, mistakes).read();
        if (!ids.add(read.id())) {
            mistakes.add("%s: the id %s is given twice".formatted(mapping.place(), read.id()));
        }
        if (mistakes.size() == before) {
            taker.accept(read);
        }
    }

    private static JsonParser parser(InputStream file) {
        return new YAMLFactory().createParser(tools.jackson.core.ObjectReadContext.empty(), file);
    }
}
