package slipway.app.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.app.Run;
import slipway.app.console.ExitStatus;

class CaseloadCommandTest {
    @TempDir
    private Path folder = Path.of("");

    private Run caseload(String out, String... more) {
        var args = new java.util.ArrayList<>(List.of(
                "caseload",
                "--data",
                folder.resolve("data").toString(),
                "--out",
                folder.resolve(out).toString()));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private String episodes(String out) throws IOException {
        return Files.readString(folder.resolve(out).resolve("episodes.csv"));
    }

    @Test
    void aClinicIsWrittenAsTablesWithoutNames() throws IOException {
        Run.of(
                "import",
                "../examples/low-irritability-stiff.yaml",
                "--data",
                folder.resolve("data").toString(),
                "--new-clinic",
                "Harbour Steps");
        Run run = caseload("a");
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isEqualTo(ExitStatus.OK);
        assertThat(run.out()).contains("1 episodes; 0 left out", "data-dictionary.csv");
        assertThat(episodes("a").lines()).hasSize(2).last().asString().contains(",30,");
        caseload("b");
        assertThat(episodes("b")).isNotEqualTo(episodes("a"));

        Path key = Files.writeString(folder.resolve("key"), "0123456789abcdef");
        caseload("c", "--key-file", key.toString());
        caseload("d", "--key-file", key.toString());
        assertThat(episodes("d")).isEqualTo(episodes("c"));
        Path tooShort = Files.writeString(folder.resolve("short"), "0123");
        Run refused = caseload("e", "--key-file", tooShort.toString());
        assertThat(refused.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(refused.err()).contains("--key-file", "16 bytes");
        assertThat(folder.resolve("e")).doesNotExist();
        assertThat(Run.of("audit", "verify", "--data", folder.resolve("data").toString())
                        .status())
                .isEqualTo(ExitStatus.OK);
    }
}
