package slipway.app.locate;

import java.util.List;
import java.util.Optional;
import slipway.care.reports.PublishedCase;
import slipway.reasoning.screening.RedFlagNotes;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.Screening;
import slipway.reasoning.screening.ScreeningInput;
import slipway.reasoning.screening.ScreeningResult;

/**
 * The screening of a published case: its free notes answer questions with yes, its findings show signs; what is not written
 * was not asked.
 *
 * @param result level and basis
 * @param notUnderstood notes that match no known wording
 */
record ScreenedCase(ScreeningResult result, List<String> notUnderstood) {
    static ScreenedCase of(PublishedCase published, Screening screening) {
        RedFlagNotes.Reading notes = RedFlagNotes.read(published.redFlags());
        Region region = published.facts().getOrDefault("region", "leg").equals("arm") ? Region.ARM : Region.LEG;
        var input = new ScreeningInput(
                region, notes.answers(), List.of(), published.findings(), published.ageYears(), Optional.empty());
        return new ScreenedCase(screening.evaluate(input), notes.notUnderstood());
    }
}
