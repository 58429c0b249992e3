package slipway.app.nerve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.app.console.BadInputException;

class ValidationPageTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void generatedPartIsReplacedAndTheTextAroundItStays() throws IOException {
        Path page = Files.writeString(
                folder.resolve("validation.md"),
                "before\n" + ValidationPage.BEGIN + "\nold numbers\n" + ValidationPage.END + "\nafter\n");
        String once = ValidationPage.with(page, "new numbers");
        assertThat(once).startsWith("before\n").endsWith("\nafter\n").contains("new numbers");
        assertThat(once).doesNotContain("old numbers");
        Files.writeString(page, once);
        assertThat(ValidationPage.with(page, "new numbers")).isEqualTo(once);
    }

    @Test
    void missingPageIsMadeWithItsMarks() {
        assertThat(ValidationPage.with(folder.resolve("none.md"), "numbers"))
                .contains(ValidationPage.BEGIN, "numbers", ValidationPage.END);
    }

    @Test
    void pageWithoutBothMarksInOrderIsRefused() throws IOException {
        for (String text :
                new String[] {"", ValidationPage.BEGIN, ValidationPage.END + ValidationPage.BEGIN, marked() + marked()
                }) {
            Path page = Files.writeString(folder.resolve("page.md"), text);
            assertThatThrownBy(() -> ValidationPage.with(page, "numbers"))
                    .isInstanceOf(BadInputException.class)
                    .hasMessageContaining("page.md")
                    .hasMessageContaining(ValidationPage.BEGIN);
        }
    }

    private static String marked() {
        return ValidationPage.BEGIN + ValidationPage.END;
    }

    @Test
    void numbersHaveATrueMinusSignAndNoNegativeZero() {
        assertThat(MarkdownTable.signed(-1.256, 2)).isEqualTo("−1.26");
        assertThat(MarkdownTable.signed(0.004, 2)).isEqualTo("0.00");
        assertThat(MarkdownTable.signed(-0.004, 2)).isEqualTo("0.00");
        assertThat(MarkdownTable.signed(2, 0)).isEqualTo("+2");
        assertThat(new MarkdownTable("a", "b").row("x|y", "z").text()).contains("| x\\|y | z |");
    }
}
