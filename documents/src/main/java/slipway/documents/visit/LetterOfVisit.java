package slipway.documents.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.care.visit.VisitPlan;
import slipway.documents.letter.ReferralLetter;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.screening.ActWithin;
import slipway.reasoning.screening.Match;
import slipway.reasoning.screening.ScreeningRule;

/** The referral letter of a visit whose screening found something. Who writes and to whom stays blank for the pen. */
public final class LetterOfVisit {
    private LetterOfVisit() {}

    /** Whether there is something to refer for: a question left open is none. */
    public static boolean needed(VisitPlan visit) {
        return visit.stopped() && !visit.screening().listStanding().isEmpty();
    }

    /**
     * The letter.
     *
     * @throws IllegalArgumentException if there is nothing to refer for
     */
    public static ReferralLetter of(VisitPlan visit, Language language, LocalDate written) {
        Words words = Words.beside(LetterOfVisit.class, language);
        var clinic = visit.file().episode().clinic();
        var patient = visit.file().patient();
        return new ReferralLetter(
                new ReferralLetter.Envelope(
                        clinic.name().orElse(""), "", clinic.phone().orElse(""), "", written, language),
                new ReferralLetter.Person(patient.name().orElse(""), Optional.empty(), ""),
                urgency(visit.screening().actWithin().orElse(ActWithin.TODAY)),
                found(visit.screening().listStanding(), language),
                List.of(words.get("letter.done")),
                notes(visit, words),
                visit.file().provenance().invented() ? words.get("invented") : "");
    }

    private static ReferralLetter.Urgency urgency(ActWithin within) {
        return switch (within) {
            case NOW -> ReferralLetter.Urgency.NOW;
            case TODAY -> ReferralLetter.Urgency.TODAY;
            case THREE_DAYS -> ReferralLetter.Urgency.THREE_DAYS;
            default -> ReferralLetter.Urgency.TWO_WEEKS;
        };
    }

    private static List<ReferralLetter.Finding> found(List<Match> matches, Language language) {
        return matches.stream()
                .map(match -> new ReferralLetter.Finding(
                        asked(match.rule(), language) + " (" + withoutLine(match.because()) + ")",
                        "",
                        match.rule().id() + ", " + match.rule().level().key()))
                .toList();
    }

    /** Where a finding stands in a file helps its writer, not the reader of a letter. */
    private static String withoutLine(String because) {
        return because.replaceAll(" ?\\(line \\d+\\)", "");
    }

    private static String asked(ScreeningRule rule, Language language) {
        String ask =
                language == Language.ES ? rule.words().askEs() : rule.words().askEn();
        String tell =
                language == Language.ES ? rule.words().tellEs() : rule.words().tellEn();
        return ask.isBlank() ? tell : ask;
    }

    private static List<String> notes(VisitPlan visit, Words words) {
        var notes = new ArrayList<String>();
        visit.file()
                .episode()
                .history()
                .durationWeeks()
                .ifPresent(weeks -> notes.add(words.get("letter.duration", trimmed(weeks))));
        notes.add(words.get("letter.age", trimmed(visit.file().patient().ageYears())));
        return notes;
    }

    private static String trimmed(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
