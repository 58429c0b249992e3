package slipway.care.facts;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Who treats, who referred, what was agreed and sent.
 *
 * @param born day of birth
 * @param therapist name and licence for the papers
 * @param referrer who sent the person
 * @param orderedOn day of a signed order or referral in the record
 * @param payer key of the payer's rule, for example {@code none}
 * @param dosage how often and for how long the person is to be seen
 * @param diagnoses codes of the diagnosis list
 * @param letters what was sent, in the order of its days
 */
public record Frame(
        Optional<LocalDate> born,
        Optional<Therapist> therapist,
        Optional<String> referrer,
        Optional<LocalDate> orderedOn,
        String payer,
        Dosage dosage,
        List<String> diagnoses,
        List<Sent> letters) {
    /** Nothing known. */
    public static final Frame UNKNOWN = new Frame(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "none",
            new Dosage(OptionalInt.empty(), OptionalInt.empty(), Optional.empty()),
            List.of(),
            List.of());

    public Frame {
        diagnoses = List.copyOf(diagnoses);
        letters = letters.stream().sorted(Comparator.comparing(Sent::day)).toList();
    }

    /** Who treats. */
    public record Therapist(String name, Optional<String> licence) {
        /** As it stands under a paper. */
        public String text() {
            return licence.map(number -> name + ", " + number).orElse(name);
        }
    }

    /**
     * How often and for how long.
     *
     * @param timesAWeek visits a week
     * @param weeks how many weeks
     * @param ends last day for which the plan was made
     */
    public record Dosage(OptionalInt timesAWeek, OptionalInt weeks, Optional<LocalDate> ends) {}

    /**
     * Something sent or signed.
     *
     * @param what {@code plan}, {@code certification}, {@code recertification}, {@code progress-report}, {@code letter}
     *     or {@code discharge}
     * @param how by which way, for example {@code fax, confirmed}
     */
    public record Sent(String what, LocalDate day, String to, String how) {}

    /** The same with other letters. */
    Frame with(List<Sent> sent) {
        return new Frame(born, therapist, referrer, orderedOn, payer, dosage, diagnoses, sent);
    }

    /** Days on which something was sent or signed. */
    public List<LocalDate> days(String what) {
        return letters.stream()
                .filter(sent -> sent.what().equals(what))
                .map(Sent::day)
                .toList();
    }
}
