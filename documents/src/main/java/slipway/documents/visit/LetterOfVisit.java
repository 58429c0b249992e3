package slipway.documents.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slipway.care.CareData;
import slipway.care.visit.VisitPlan;
import slipway.documents.letter.ReferralLetter;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.screening.ActWithin;
import slipway.reasoning.screening.Level;
import slipway.reasoning.screening.Match;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.ScreeningRule;
import slipway.reasoning.screening.ScreeningRules;

/** The referral letter of a visit whose screening found something. Who writes and to whom stays blank for the pen. */
public final class LetterOfVisit {
    private static final int NAMED_QUESTIONS = 3;

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
                found(visit, language),
                List.of(words.get("letter.done")),
                notes(visit, words, language),
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

    /** What the screening found. */
    private static List<ReferralLetter.Finding> found(VisitPlan visit, Language language) {
        var found = new ArrayList<ReferralLetter.Finding>();
        for (Match match : visit.screening().listStanding()) {
            found.add(new ReferralLetter.Finding(
                    told(match, language),
                    "",
                    match.rule().id() + ", " + match.rule().level().key()));
        }
        return found;
    }

    /** Where a finding stands in a file helps its writer, not the reader of a letter. */
    private static String withoutLine(String because) {
        return because.replaceAll(" ?\\(line \\d+\\)", "");
    }

    /** A question with its answer; of a sign only what was found. */
    private static String told(Match match, Language language) {
        String because = withoutLine(match.because());
        return match.rule().isQuestion() ? asked(match.rule(), language) + " (" + because + ")" : because;
    }

    private static String asked(ScreeningRule rule, Language language) {
        String ask =
                language == Language.ES ? rule.words().askEs() : rule.words().askEn();
        String tell =
                language == Language.ES ? rule.words().tellEs() : rule.words().tellEn();
        return ask.isBlank() ? tell : ask;
    }

    private static List<String> notes(VisitPlan visit, Words words, Language language) {
        var notes = new ArrayList<String>();
        notes.add(words.get(
                "letter.side",
                words.get("side." + CareData.word(visit.file().episode().side()))));
        visit.file()
                .episode()
                .history()
                .durationWeeks()
                .ifPresent(weeks -> notes.add(words.get("letter.duration", trimmed(weeks))));
        notes.add(words.get("letter.age", trimmed(visit.file().patient().ageYears())));
        // Told in full width rather than as rows, so that the letter stays on its page.
        String abnormal = visit.file().examination().findings().stream()
                .filter(finding -> finding.result().abnormal() && finding.kind() != FindingKind.SYMPTOM)
                .map(Finding::text)
                .collect(Collectors.joining("; "));
        if (!abnormal.isEmpty()) {
            notes.add(words.get("letter.finding", abnormal));
        }
        notAnswered(visit, words, language).ifPresent(notes::add);
        return notes;
    }

    /** Questions that were not answered: the emergency ones by name, up to as many as a letter holds, the rest by number. */
    private static Optional<String> notAnswered(VisitPlan visit, Words words, Language language) {
        List<String> open = visit.screening().notAsked();
        if (open.isEmpty()) {
            return Optional.empty();
        }
        List<String> named = ScreeningRules.load().listRequired(Region.LEG).stream()
                .filter(rule -> open.contains(rule.id()) && rule.level() == Level.EMERGENCY)
                .limit(NAMED_QUESTIONS)
                .map(rule -> asked(rule, language))
                .toList();
        int rest = open.size() - named.size();
        String more = rest > 0 ? " " + words.get("letter.more", rest) : "";
        return Optional.of(words.get("letter.notAsked", String.join(" ", named)) + more);
    }

    private static String trimmed(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
