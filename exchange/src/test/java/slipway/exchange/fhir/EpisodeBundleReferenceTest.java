package slipway.exchange.fhir;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hl7.fhir.r4.model.Bundle;
import org.junit.jupiter.api.Test;
import slipway.care.facts.EpisodeFacts;
import slipway.exchange.SampleEpisodes;

/** The export before the validator of HL7, and through the import again. */
class EpisodeBundleReferenceTest {
    private static final Instant ISSUED = Instant.parse("2026-05-05T10:00:00Z");
    private static final String JSON = json(SampleEpisodes.full());

    /** What cannot be checked without the tables of others; see the validator. */
    private static final List<String> NOT_CHECKED_OFFLINE =
            List.of("http://loinc.org", "http://hl7.org/fhir/sid/icd-10-cm", "http://hl7.org/fhir/us/core/CodeSystem");

    private static Bundle bundle(EpisodeFacts facts) {
        var paper = new Export.PaperFile(
                "progress-report", "Progress report", "application/pdf", new byte[] {1, 2, 3}, ISSUED, "R. Almond");
        return EpisodeBundle.of(new Export(facts, SampleEpisodes.plan(), ISSUED, "Slipway test", List.of(paper)));
    }

    private static String json(EpisodeFacts facts) {
        return Fhir.write(bundle(facts));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void theOfficialValidatorHasNothingToSayButThatItLacksCodeSystems() {
        List<String> complaints = OfficialValidator.complaints(JSON);
        assertThat(complaints)
                .allMatch(text -> text.startsWith("warning")
                        && text.contains("CodeSystem is unknown")
                        && NOT_CHECKED_OFFLINE.stream().anyMatch(text::contains));
    }

    @Test
    void theValidatorDoesFindWhatIsWrong() {
        String broken = JSON.replaceFirst("\"status\": \"final\"", "\"status\": \"finished\"")
                .replaceFirst("\"code\": \"deg\"", "\"code\": \"foounit\"");
        assertThat(OfficialValidator.complaints(broken))
                .anyMatch(text -> text.startsWith("error") && text.contains("finished"))
                .anyMatch(text -> text.startsWith("error") && text.contains("foounit"));
    }

    @Test
    void everyKindOfResourceIsThereAndEveryReferenceLeadsSomewhere() {
        Bundle bundle = bundle(SampleEpisodes.full());
        Set<String> types = new TreeSet<>();
        Set<String> addresses = new HashSet<>();
        bundle.getEntry().forEach(entry -> {
            types.add(entry.getResource().fhirType());
            assertThat(addresses.add(entry.getFullUrl())).isTrue();
        });
        assertThat(types)
                .contains(
                        "Patient",
                        "Practitioner",
                        "EpisodeOfCare",
                        "Encounter",
                        "Condition",
                        "Observation",
                        "QuestionnaireResponse",
                        "Goal",
                        "CarePlan",
                        "ServiceRequest",
                        "Procedure",
                        "Communication",
                        "DocumentReference",
                        "Provenance");
        var found =
                java.util.regex.Pattern.compile("\"reference\": \"([^\"]*)\"").matcher(JSON);
        while (found.find()) {
            assertThat(addresses).contains(found.group(1));
        }
    }

    @Test
    void theSameEpisodeGivesTheSameText() {
        assertThat(json(SampleEpisodes.full())).isEqualTo(JSON);
    }

    @Test
    void outInAndOutAgainIsStable() {
        Preview first = FhirImport.preview(bytes(JSON), Optional.of(SampleEpisodes.bare()));
        assertThat(first.changes()).isTrue();
        assertThat(first.of(Preview.Kind.NOT_UNDERSTOOD)).isEmpty();
        EpisodeFacts taken = first.result().orElseThrow();
        assertThat(taken.scores()).isEqualTo(SampleEpisodes.full().scores());
        assertThat(taken.frame().diagnoses())
                .isEqualTo(SampleEpisodes.full().frame().diagnoses());
        assertThat(taken.frame().orderedOn())
                .isEqualTo(SampleEpisodes.full().frame().orderedOn());
        assertThat(taken.frame().referrer())
                .isEqualTo(SampleEpisodes.full().frame().referrer());
        String again = json(taken);
        Preview second = FhirImport.preview(bytes(again), Optional.of(taken));
        assertThat(second.changes()).isFalse();
        assertThat(json(second.result().orElseThrow())).isEqualTo(again);
    }
}
