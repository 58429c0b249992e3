package slipway.documents.letter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipway.exercises.exercise.Language;

/**
 * All that stands in a referral letter. Texts are in the language of the envelope; an empty text is printed as a blank
 * to be filled in by hand.
 *
 * @param envelope from whom, to whom, when
 * @param person who is referred
 * @param urgency how soon the person must be seen
 * @param found at least one finding
 * @param done what was done so far, such as "No nerve glides given"; empty: blank lines
 * @param notes what the reader should know, such as how much a missing sign is worth; may be empty
 * @param mark printed above the title when not empty, such as "Invented person"
 */
public record ReferralLetter(
        Envelope envelope,
        Person person,
        Urgency urgency,
        List<Finding> found,
        List<String> done,
        List<String> notes,
        String mark) {

    public ReferralLetter {
        found = List.copyOf(found);
        done = List.copyOf(done);
        notes = List.copyOf(notes);
        mark = mark.strip();
        if (found.isEmpty()) {
            throw new IllegalArgumentException("a referral letter needs at least one finding");
        }
    }

    /** How soon, in the steps of the screening rules. */
    public enum Urgency {
        NOW("now"),
        TODAY("today"),
        THREE_DAYS("three-days"),
        TWO_WEEKS("two-weeks");

        private final String key;

        Urgency(String key) {
            this.key = key;
        }

        /** Ending of the message keys. */
        String key() {
            return key;
        }
    }

    /**
     * From whom, to whom, when.
     *
     * @param therapist name and licence; empty: blank
     * @param phone under which the writer is reached; empty: blank
     * @param to department or physician; empty: blank
     * @param written day of the letter
     * @param language of the whole letter
     */
    public record Envelope(
            String clinic, String therapist, String phone, String to, LocalDate written, Language language) {}

    /** Who is referred; what is missing or empty is printed as a blank. */
    public record Person(String name, Optional<LocalDate> born, String phone) {}

    /**
     * One thing that was found.
     *
     * @param what in words, such as "New numbness between the legs: yes"
     * @param when it was noticed or tested, as recorded; empty: blank
     * @param basis rule or source that makes it matter, such as "CES-1, emergency"; may be empty
     */
    public record Finding(String what, String when, String basis) {
        public Finding {
            if (what.isBlank()) {
                throw new IllegalArgumentException("a finding in a letter must not be blank");
            }
        }
    }
}
