package slipway.documents.letter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipway.documents.letter.ReferralLetter.Envelope;
import slipway.documents.letter.ReferralLetter.Finding;
import slipway.documents.letter.ReferralLetter.Person;
import slipway.documents.letter.ReferralLetter.Urgency;
import slipway.exercises.exercise.Language;

/** Invented letters. */
final class SampleLetters {
    private SampleLetters() {}

    static ReferralLetter emergency(Language language) {
        return new ReferralLetter(
                new Envelope(
                        "Harbour Street Clinic (invented)",
                        "R. Almond, PT",
                        "555-0142",
                        "Emergency department",
                        LocalDate.of(2026, 3, 4),
                        language),
                new Person("Marta Quill", Optional.of(LocalDate.of(1961, 7, 19)), "555-0177"),
                Urgency.NOW,
                List.of(
                        new Finding(
                                "Newly numb between the legs and around the anus: yes",
                                "since March 3, 2026",
                                "Emergency sign of cauda equina syndrome"),
                        new Finding("Cannot pass urine since this morning: yes", "March 4, 2026", "Emergency sign"),
                        new Finding(
                                "Straight leg raise right: pain below the knee at 30 degrees", "March 4, 2026", "")),
                List.of(
                        "No nerve glides and no home exercises were given.",
                        "The person was told to go to the emergency department and not to drive."),
                List.of(),
                "Invented person");
    }

    /** Everything that may be missing is missing. */
    static ReferralLetter blank() {
        return new ReferralLetter(
                new Envelope("", "", "", "", LocalDate.of(2026, 3, 4), Language.EN),
                new Person("", Optional.empty(), ""),
                Urgency.THREE_DAYS,
                List.of(new Finding("Ankle dorsiflexion right: grade 2", "", "")),
                List.of(),
                List.of(),
                "");
    }
}
