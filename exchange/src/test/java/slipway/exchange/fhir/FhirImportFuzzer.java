package slipway.exchange.fhir;

import java.util.Optional;
import slipway.care.facts.EpisodeFacts;
import slipway.exchange.SampleEpisodes;

/**
 * What a fuzzer calls (Jazzer finds the method by its name): bytes go in; a preview or a refusal with a reason comes out,
 * and the episode stays what it was.
 */
public final class FhirImportFuzzer {
    private static final EpisodeFacts CURRENT = SampleEpisodes.bare();

    private FhirImportFuzzer() {}

    public static void fuzzerTestOneInput(byte[] data) {
        try {
            Preview preview = FhirImport.preview(data, Optional.of(CURRENT));
            if (!preview.changes() && !preview.result().orElseThrow().scores().equals(CURRENT.scores())) {
                throw new IllegalStateException("a preview without changes changed the scores");
            }
        } catch (RefusedException e) {
            if (String.valueOf(e.getMessage()).length() > 300) {
                throw new IllegalStateException("a refusal repeats what it was given", e);
            }
        }
    }
}
