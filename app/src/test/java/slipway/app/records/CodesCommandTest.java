package slipway.app.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.app.Run;
import slipway.app.console.ExitStatus;

class CodesCommandTest {
    private static final String HEAD = "code,billable,side,validFrom,validTo,words,source\n";

    @TempDir
    private Path folder = Path.of("");

    private Run codes(String... args) {
        var all = new ArrayList<>(List.of("codes"));
        all.addAll(List.of(args));
        all.addAll(List.of("--data", folder.resolve("data").toString()));
        return Run.of(all.toArray(String[]::new));
    }

    @Test
    void aFileIsShownThenLoadedWithTheWordThatWasShownAndListed() throws IOException {
        Run.of(
                "import",
                "../examples/low-irritability-stiff.yaml",
                "--data",
                folder.resolve("data").toString(),
                "--new-clinic",
                "Harbour Steps");
        assertThat(codes("list").out()).contains("nothing loaded", "G57.01");
        String file = Files.writeString(
                        folder.resolve("codes.csv"),
                        HEAD
                                + "G57.01,yes,right,2015-10-01,2026-10-01,own words,own\nQ99.8,yes,none,2026-10-01,,new words,own\n")
                .toString();
        Run shown = codes("load", file);
        assertThat(shown.err()).isEmpty();
        assertThat(shown.out()).contains("ended      G57.01", "new        Q99.8", "1 new", "0 taken out");
        Matcher word = Pattern.compile("--confirm ([0-9a-f]{16})").matcher(shown.out());
        assertThat(word.find()).isTrue();
        assertThat(codes("load", file, "--confirm", "0123456789abcdef").status())
                .isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(codes("list").out()).contains("nothing loaded");
        assertThat(codes("load", file, "--confirm", word.group(1)).out()).contains("loaded 2 codes, 0 exclusions");
        assertThat(codes("load", file, "--confirm", word.group(1)).status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(codes("list", "--date", "2026-10-01").out())
                .contains("load 1", "by codes", "Q99.8")
                .doesNotContain("G57.01 ");
        assertThat(codes("list", "--date", "2026-09-30").out())
                .contains("G57.01 ")
                .doesNotContain("Q99.8");
    }

    @Test
    void allMistakesOfBothFilesAreTold() throws IOException {
        Run.of(
                "import",
                "../examples/low-irritability-stiff.yaml",
                "--data",
                folder.resolve("data").toString(),
                "--new-clinic",
                "Harbour Steps");
        String file = Files.writeString(folder.resolve("codes.csv"), HEAD + "g,yes,right,2015-10-01,,w,s\n")
                .toString();
        String others = Files.writeString(folder.resolve("others.csv"), "family,other,kind,source\nG57,M54,9,s\n")
                .toString();
        Run run = codes("load", file, "--exclusions", others);
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(run.err()).contains("codes.csv: line 2, column 1", "others.csv: line 2, column 9");
    }
}
