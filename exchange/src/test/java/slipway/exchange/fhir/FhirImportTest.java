package slipway.exchange.fhir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.exchange.SampleEpisodes;

class FhirImportTest {
    private static final Path SEEDS = Path.of("src/test/resources/slipway/exchange/fhir/seeds");

    private static Preview preview(String entries) {
        return read("{\"resourceType\":\"Bundle\",\"type\":\"collection\",\"entry\":[" + entries + "]}");
    }

    private static Preview read(String text) {
        return FhirImport.preview(text.getBytes(StandardCharsets.UTF_8), Optional.of(SampleEpisodes.bare()));
    }

    private static String entry(String resource) {
        return "{\"fullUrl\":\"urn:uuid:%s\",\"resource\":%s}"
                .formatted(java.util.UUID.nameUUIDFromBytes(resource.getBytes(StandardCharsets.UTF_8)), resource);
    }

    private static String pain(String more) {
        return entry("""
                {"resourceType":"Observation","status":"final","code":{"coding":[{"system":"http://loinc.org","code":"72514-3"}]},
                 "effectiveDateTime":"2026-04-06T10:00:00Z","valueQuantity":{"value":6,"system":"http://unitsofmeasure.org","code":"{score}"}%s}""".formatted(more));
    }

    @Test
    void aScoreOfAnotherSystemIsTakenWithItsDay() {
        Preview preview = preview(pain(""));
        assertThat(preview.items())
                .extracting(Preview.Item::kind, Preview.Item::what)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(Preview.Kind.ADD, "Pain 0-10 on 2026-04-06"));
        assertThat(preview.result().orElseThrow().scores().get(0).score()).contains(6.0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"status\":\"preliminary\"",
                "\"value\":11",
                "\"code\":\"kg\"",
                "\"effectiveDateTime\":\"2026\"",
                "\"modifierExtension\":[{\"url\":\"urn:x\",\"valueBoolean\":true}],\"status\":\"final\"",
                "\"implicitRules\":\"urn:x\",\"status\":\"final\"",
                "\"value\":6,\"comparator\":\">\""
            })
    void whatCouldMeanSomethingElseIsLeftOutWithItsReason(String other) {
        String key = other.contains("status") ? "\"status\":\"final\"" : "";
        String changed = switch (other.substring(0, 6)) {
            case "\"value" -> pain("").replace("\"value\":6", other);
            case "\"code\"" -> pain("").replace("\"code\":\"{score}\"", other);
            case "\"effec" -> pain("").replace("\"effectiveDateTime\":\"2026-04-06T10:00:00Z\"", other);
            default -> pain("").replace(key, other);
        };
        assertThat(changed).isNotEqualTo(pain(""));
        Preview preview = preview(changed);
        assertThat(preview.items()).extracting(Preview.Item::kind).containsExactly(Preview.Kind.LEFT_OUT);
        assertThat(preview.changes()).isFalse();
    }

    @Test
    void whatIsAboutSomebodyElseIsLeftOut() {
        Preview preview = preview(entry("{\"resourceType\":\"Patient\",\"gender\":\"male\"}") + ","
                + pain(",\"subject\":{\"reference\":\"urn:uuid:00000000-0000-0000-0000-000000000001\"}"));
        assertThat(preview.of(Preview.Kind.LEFT_OUT))
                .singleElement()
                .satisfies(item -> assertThat(item.what()).contains("somebody else"));
    }

    @Test
    void whatIsNotUnderstoodIsListedAndNotDropped() {
        Preview preview = preview(entry(
                        "{\"resourceType\":\"Condition\",\"code\":{\"text\":\"sore leg\"},\"subject\":{},\"mood\":\"low\"}")
                + "," + entry("{\"resourceType\":\"Observation\",\"status\":\"final\",\"code\":{\"text\":\"x\"}}")
                + "," + entry("{\"resourceType\":\"Medication\"}"));
        assertThat(preview.of(Preview.Kind.NOT_UNDERSTOOD)).hasSize(3);
        assertThat(preview.of(Preview.Kind.LEFT_OUT)).hasSize(1);
        assertThat(preview.changes()).isFalse();
    }

    @Test
    void aRefutedConditionAndARequestThatOrdersNothingAreLeftOut() {
        Preview preview = preview(entry("""
                        {"resourceType":"Condition","verificationStatus":{"coding":[{"code":"refuted"}]},
                         "code":{"coding":[{"system":"http://hl7.org/fhir/sid/icd-10-cm","code":"M54.31"}]}}""")
                + ","
                + entry("{\"resourceType\":\"ServiceRequest\",\"status\":\"active\",\"intent\":\"proposal\"}"));
        assertThat(preview.of(Preview.Kind.LEFT_OUT)).hasSize(2);
    }

    static Stream<String> hostile() {
        String head = "{\"resourceType\":\"Bundle\",\"type\":\"collection\",\"entry\":[";
        return Stream.of(
                "",
                " ",
                "[]",
                "null",
                "<Bundle xmlns=\"http://hl7.org/fhir\"/>",
                "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]><a>&b;</a>",
                "{",
                "{\"resourceType\":\"Patient\"}",
                "{\"resourceType\":\"Bundle\",\"resourceType\":\"Bundle\"}",
                "{\"resourceType\":\"Bundle\"}{}",
                head + "[".repeat(100_000),
                head + "{\"resource\":{\"a\":" + "{\"a\":".repeat(200) + "1" + "}".repeat(200) + "}}]}",
                head + "{\"fullUrl\":\"urn:a\"},{\"fullUrl\":\"urn:a\"}]}",
                head + "1".repeat(1000) + "]}",
                head + "{}" + ",{}".repeat(Gate.MAX_ENTRIES) + "]}",
                head + entry("{\"resourceType\":\"Patient\"}") + ","
                        + entry("{\"resourceType\":\"Patient\",\"active\":true}") + "]}",
                " ".repeat(Gate.MAX_BYTES + 1));
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void hostileInputIsRefusedWithAReasonThatRepeatsNothing(String text) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(RefusedException.class)
                .hasMessageNotContaining("passwd")
                .satisfies(refused -> assertThat(
                                String.valueOf(refused.getMessage()).length())
                        .isLessThan(200));
    }

    static List<Path> seeds() throws IOException {
        try (Stream<Path> files = Files.list(SEEDS)) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noSeedOfTheFuzzerDoesMoreThanBeRefused(Path seed) throws IOException {
        FhirImportFuzzer.fuzzerTestOneInput(Files.readAllBytes(seed));
    }
}
