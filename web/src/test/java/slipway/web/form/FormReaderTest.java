package slipway.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FormReaderTest {
    @Test
    void blanksAreAbsentNumbersAreNumbersAndTextStaysText() {
        var read = FormReader.read(
                Map.of(
                        "irritability.worstPain", new String[] {"7,5"},
                        "irritability.restPain", new String[] {" "},
                        "irritability.settleMinutes", new String[] {"soon"},
                        "irritability.judgement", new String[] {"high"}),
                List.of("irritability"));
        assertThat(read.toString())
                .isEqualTo("{\"irritability\":{\"judgement\":\"high\",\"settleMinutes\":\"soon\",\"worstPain\":7.5}}");
    }

    @Test
    void listsCloseUpAndForeignKeysAreLeftAlone() {
        var read = FormReader.read(
                Map.of(
                        "tests[0].test", new String[] {"slump"},
                        "tests[4].test", new String[] {"straight-leg-raise"},
                        "person.name", new String[] {"X"},
                        "tests[99999999].test", new String[] {"slump"}),
                List.of("tests"));
        assertThat(read.path("tests").size()).isEqualTo(2);
        assertThat(read.has("person")).isFalse();
    }
}
