package slipway.exchange.person;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.apache.commons.csv.CSVRecord;
import slipway.exchange.ExchangeData;
import slipway.exchange.tables.Csv;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What is kept of a person as tables. The dictionary says which columns a table has; every value that has no column
 * there stands in {@code contents.csv} with its path, so that nothing is left out.
 */
final class PersonTables {
    private static final String DICTIONARY = "person-dictionary.csv";
    private static final String CONTENTS = "contents.csv";

    private final PersonRecord record;
    private final Map<String, List<String>> columns = columns();
    private final Map<String, List<List<String>>> rows = new LinkedHashMap<>();

    private PersonTables(PersonRecord record) {
        this.record = record;
        columns.keySet().forEach(table -> rows.put(table, new ArrayList<>()));
    }

    /** The tables by name of the file, the dictionary among them. */
    static Map<String, String> of(PersonRecord record) {
        var tables = new PersonTables(record);
        tables.fill();
        var files = new LinkedHashMap<String, String>();
        tables.rows.forEach((table, lines) -> files.put(table, Csv.of(tables.columns(table), lines)));
        files.put("data-dictionary.csv", ExchangeData.text(DICTIONARY));
        return files;
    }

    private static Map<String, List<String>> columns() {
        var columns = new LinkedHashMap<String, List<String>>();
        for (CSVRecord row : ExchangeData.table(DICTIONARY)) {
            columns.computeIfAbsent(row.get("table"), table -> new ArrayList<>())
                    .add(row.get("column"));
        }
        return columns;
    }

    private List<String> columns(String table) {
        List<String> found = columns.get(table);
        if (found == null) {
            throw new IllegalStateException("the dictionary of a person's tables has no " + table);
        }
        return found;
    }

    private void fill() {
        add("person", "", tree(record.person()));
        for (Map<String, Object> episode : record.episodes()) {
            JsonNode all = tree(episode);
            String id = all.path("episode").path("id").asString();
            add("episodes", id, all.path("episode"));
            all.path("sections").valueStream().forEach(versions -> versions.forEach(each -> add("sections", id, each)));
            all.propertyStream()
                    .filter(entry -> entry.getValue().isArray())
                    .forEach(entry -> entry.getValue().forEach(each -> add(entry.getKey(), id, each)));
        }
        record.reminders().forEach(consent -> add("reminders", "", tree(consent)));
        record.trail().forEach(entry -> add("trail", "", tree(entry)));
    }

    private static JsonNode tree(Object value) {
        return JsonMapper.shared().valueToTree(value);
    }

    private void add(String name, String episode, JsonNode node) {
        String table = name.toLowerCase(Locale.ROOT) + ".csv";
        var values = new TreeMap<String, String>();
        leaves("", node, values::put);
        if (!episode.isEmpty()) {
            values.put("episodeId", episode);
        }
        rows.computeIfAbsent(table, none -> new ArrayList<>())
                .add(columns(table).stream()
                        .map(column -> values.getOrDefault(column, ""))
                        .toList());
        values.keySet().removeAll(columns(table));
        values.forEach((path, value) -> contents().add(List.of(table, episode, key(node), path, value)));
    }

    private List<List<String>> contents() {
        return rows.computeIfAbsent(CONTENTS, none -> new ArrayList<>());
    }

    /** What tells a row from the others of its table. */
    private static String key(JsonNode node) {
        for (String name : List.of("id", "number", "seq")) {
            if (node.has(name)) {
                return node.path(name).asString();
            }
        }
        return node.path("section").asString("") + "/" + node.path("version").asString("");
    }

    /** Every value with its path; staff by name. */
    private void leaves(String path, JsonNode node, BiConsumer<String, String> to) {
        if (node.isObject()) {
            node.propertyStream()
                    .forEach(entry -> leaves(
                            path.isEmpty() ? entry.getKey() : path + "." + entry.getKey(), entry.getValue(), to));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                leaves("%s[%d]".formatted(path, i), node.get(i), to);
            }
        } else if (!node.isNull() && !node.isMissingNode()) {
            String text = node.asString();
            to.accept(path, record.staff().getOrDefault(text, text));
        }
    }
}
