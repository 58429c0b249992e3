package slipway.app.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void replacesAFileAndLeavesNothingBeside() throws IOException {
        Path file = folder.resolve("new/plan.json");
        WholeFile.write(file, "first".getBytes(StandardCharsets.UTF_8));
        WholeFile.write(file, "second".getBytes(StandardCharsets.UTF_8));
        assertThat(file).hasContent("second");
        try (var files = Files.list(folder.resolve("new"))) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void writesAllOrNone() throws IOException {
        Path good = folder.resolve("plan.json");
        WholeFile.write(good, "old".getBytes(StandardCharsets.UTF_8));
        Path blocked = folder.resolve("plan.json/inside.txt");
        Map<Path, byte[]> files = new LinkedHashMap<>();
        files.put(good, "new".getBytes(StandardCharsets.UTF_8));
        files.put(blocked, "x".getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> WholeFile.writeAll(files)).isInstanceOf(UncheckedIOException.class);
        assertThat(good).hasContent("old");
        try (var left = Files.list(folder)) {
            assertThat(left).containsExactly(good);
        }
    }
}
