package slipway.care.codes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.exercises.yaml.MistakesException;
import slipway.reasoning.codes.CodeEntry;

class CodesFileTest {
    private static final String HEAD = String.join(",", CodesFile.COLUMNS) + "\n";

    private static List<CodeEntry> read(String text) {
        return CodesFile.codes("codes.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> mistakes(String text) {
        return catchThrowableOfType(MistakesException.class, () -> read(text)).mistakes().stream()
                .map(String::valueOf)
                .toList();
    }

    @Test
    void aWholeFileIsRead() {
        List<CodeEntry> codes = read(HEAD
                + "# ours\n"
                + "M54.5,yes,none,2015-10-01,2021-10-01,\"pain, low back\",yearly file\n"
                + "M54.5,no,none,2021-10-01,,family,yearly file\n");
        assertThat(codes).extracting(CodeEntry::billable).containsExactly(true, false);
        assertThat(codes.get(0).words()).isEqualTo("pain, low back");
        assertThat(codes.get(0).validTo()).contains(LocalDate.of(2021, 10, 1));
        assertThat(read(HEAD)).isEmpty();
    }

    @Test
    void everyMistakeIsToldAtOnceWithItsPlace() {
        assertThat(mistakes(HEAD + "g57,maybe,up,2015-02-30,tomorrow,a <b>,\nG57.01,yes,right,,2015-01-01,w,s\n"))
                .containsExactly(
                        "line 2, column 1: code: must be a code like G57.01, was \"g57\"",
                        "line 2, column 5: billable: must be yes or no, was \"maybe\"",
                        "line 2, column 11: side: must be one of none, unspecified, right, left, bilateral, was \"up\"",
                        "line 2, column 14: validFrom: must be a day like 2026-10-01, was \"2015-02-30\"",
                        "line 2, column 25: validTo: must be a day like 2026-10-01, was \"tomorrow\"",
                        "line 2, column 34: words: must have no < or > and no control characters, was \"a <b>\"",
                        "line 2, column 40: source: must have 1 to 200 letters, had 0",
                        "line 3, column 18: validFrom: is missing; it is the first day of service for which the line holds");
        assertThat(mistakes(HEAD + "G57.01,yes,right,2015-10-01,2015-10-01,w,s\n"))
                .singleElement()
                .asString()
                .contains("validTo: must be after validFrom 2015-10-01");
        assertThat(mistakes(HEAD + "G57.01,yes,right,2015-10-01,,bell\u0007,s\n"))
                .singleElement()
                .asString()
                .contains("control characters", "bell?");
    }

    @Test
    void ofOneCodeOnlyOneLineMayHoldOnADay() {
        assertThat(mistakes(HEAD
                        + "G57.01,yes,right,2021-10-01,,w,s\n"
                        + "G57.02,yes,left,2015-10-01,,w,s\n"
                        + "G57.01,yes,right,2015-10-01,2021-10-02,w,s\n"))
                .containsExactly(
                        "line 4, column 1: code: G57.01 holds on 2021-10-01 by line 2 already; of one code only"
                                + " one line may hold on a day");
        assertThat(read(HEAD + "G57.01,yes,right,2021-10-01,,w,s\nG57.01,yes,right,2015-10-01,2021-10-01,w,s\n"))
                .hasSize(2);
    }

    @Test
    void whatIsNoSuchTableIsRefused() {
        assertThat(mistakes("code;billable\n")).isNotEmpty();
        assertThat(mistakes("")).singleElement().asString().contains("is empty", "code,billable,side");
        assertThat(mistakes(HEAD + "G57.01,yes\n")).singleElement().asString().contains("7 values, had 2");
        assertThat(mistakes("x".repeat(CodesFile.MAX_BYTES + 1)))
                .singleElement()
                .asString()
                .contains("at most");
    }

    @Test
    void exclusionsAreReadOrRefusedToo() {
        String head = String.join(",", CodesFile.EXCLUSION_COLUMNS) + "\n";
        byte[] good = (head + "G57.0,M54.3,1,\"note, seen\"\n").getBytes(StandardCharsets.UTF_8);
        assertThat(CodesFile.exclusions("x.csv", good))
                .singleElement()
                .satisfies(each -> assertThat(each.source()).isEqualTo("note, seen"));
        byte[] bad = (head + "G57.0,M54.3,1,a\nM54.3,G57.0,3,\nM54.3,G57.0,2,b\n").getBytes(StandardCharsets.UTF_8);
        assertThat(catchThrowableOfType(MistakesException.class, () -> CodesFile.exclusions("x.csv", bad)))
                .hasMessageContaining("line 3, column 13: kind: must be 1")
                .hasMessageContaining("line 3, column 15: source")
                .hasMessageContaining("line 4, column 1: family: M54.3 and G57.0 stand in the file twice");
    }
}
