package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** While servers are changed one after another, the old program works on the new tables: scripts may only add. */
class MigrationRuleTest {
    private static final List<Pattern> ADDS = List.of(
            Pattern.compile("create table \\w+ .*"),
            Pattern.compile("create (unique )?index \\w+ .*"),
            Pattern.compile("alter table \\w+ add column .*"));
    private static final Pattern NEEDED_COLUMN = Pattern.compile("alter table .* not null(?!.* default ).*");

    @Test
    void everyScriptOnlyAdds() throws IOException, URISyntaxException {
        for (Path script : scripts()) {
            assertThat(wrong(Files.readString(script, StandardCharsets.UTF_8)))
                    .as(script.getFileName().toString())
                    .isEmpty();
        }
    }

    @Test
    void whatAnOldProgramWouldTripOverIsFound() {
        assertThat(wrong("drop table draft;")).hasSize(1);
        assertThat(wrong("alter table staff rename column login to name;")).hasSize(1);
        assertThat(wrong("alter table staff add column kind text not null;")).hasSize(1);
        assertThat(wrong("alter table staff add column kind text not null default 'x';"))
                .isEmpty();
        assertThat(wrong("-- a word; and another\ncreate table a (\n  id text -- drop; it\n);"))
                .isEmpty();
    }

    private static List<Path> scripts() throws IOException, URISyntaxException {
        Path folder = Path.of(
                Objects.requireNonNull(Store.class.getResource("migration")).toURI());
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }

    /** Statements that do more than add. */
    private static List<String> wrong(String script) {
        String bare = script.replaceAll("--[^\n]*", " ").toLowerCase(Locale.ROOT);
        var wrong = new ArrayList<String>();
        for (String statement : bare.split(";", -1)) {
            String line = statement.strip().replaceAll("\\s+", " ");
            boolean adds = ADDS.stream().anyMatch(form -> form.matcher(line).matches());
            if (!line.isEmpty() && (!adds || NEEDED_COLUMN.matcher(line).matches())) {
                wrong.add(line);
            }
        }
        return wrong;
    }
}
