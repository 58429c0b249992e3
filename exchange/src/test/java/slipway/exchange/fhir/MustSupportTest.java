package slipway.exchange.fhir;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.exchange.SampleEpisodes;
import slipway.reasoning.codes.DiagnosisCodes;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What US Core must support and the record holds is in the bundle. Goal and CarePlan: lists as in US Core 3.1.1 and 6.1
 * (hl7.org/fhir/us/core); Patient and Condition: from memory, to be held against the published profiles. What is not
 * here is told in docs/fhir.md.
 */
class MustSupportTest {
    private static final JsonNode BUNDLE = JsonMapper.shared()
            .readTree(Fhir.write(EpisodeBundle.of(new Export(
                    SampleEpisodes.full(),
                    SampleEpisodes.plan(),
                    Instant.parse("2026-05-05T10:00:00Z"),
                    "Slipway test",
                    List.of(),
                    new Export.Contact(Optional.of("555 0100"), Optional.of("invented@example.org")),
                    DiagnosisCodes.bundled()))));

    @ParameterizedTest
    @CsvSource({
        "Patient, /identifier/0/system",
        "Patient, /identifier/0/value",
        "Patient, /name/0",
        "Patient, /gender",
        "Patient, /birthDate",
        "Patient, /telecom/0/system",
        "Patient, /telecom/1/value",
        "Patient, /communication/0/language",
        "Condition, /clinicalStatus",
        "Condition, /category/0",
        "Condition, /code",
        "Condition, /subject",
        "Goal, /lifecycleStatus",
        "Goal, /description",
        "Goal, /subject",
        "Goal, /startDate",
        "Goal, /target/0/dueDate",
        "CarePlan, /text/status",
        "CarePlan, /text/div",
        "CarePlan, /status",
        "CarePlan, /intent",
        "CarePlan, /category/0/coding/0/code",
        "CarePlan, /subject"
    })
    void whatTheRecordHoldsIsThere(String type, String pointer) {
        List<JsonNode> all = BUNDLE.path("entry")
                .valueStream()
                .map(entry -> entry.path("resource"))
                .filter(resource -> resource.path("resourceType").asString().equals(type))
                .toList();
        assertThat(all).isNotEmpty().allMatch(resource -> !resource.at(pointer).isMissingNode());
    }
}
