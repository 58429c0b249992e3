package slipway.documents.letter;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.Map;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.documents.pdf.Printed;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;

/** Writes referral letters. Safe for use by several threads; keep one. */
public final class LetterPrinter {
    /** Sizes of type to try, in points, so that a letter stays on one page. */
    private static final int[] POINTS = {12, 11, 10};

    private final PdfEngine engine;
    private final Map<Language, Words> words = new EnumMap<>(Language.class);

    public LetterPrinter(PdfEngine engine) {
        this.engine = engine;
        for (Language language : Language.values()) {
            words.put(language, Words.beside(LetterPrinter.class, language));
        }
    }

    /** The letter as plain text. */
    public String text(ReferralLetter letter) {
        return LetterText.of(content(letter));
    }

    /**
     * The letter as tagged PDF (PDF/UA-1), dated with the day on which it was written. On one page if that can be read;
     * a letter that is too long goes on to a second page rather than lose a finding.
     */
    public Printed print(ReferralLetter letter, Paper paper) {
        Printed printed = print(letter, paper, POINTS[0]);
        for (int i = 1; i < POINTS.length && printed.pageCount() > 1; i++) {
            printed = print(letter, paper, POINTS[i]);
        }
        return printed;
    }

    private Printed print(ReferralLetter letter, Paper paper, int points) {
        Instant dated = letter.envelope().written().atStartOfDay().toInstant(ZoneOffset.UTC);
        return engine.print(LetterPage.of(content(letter), letter.envelope().language(), paper, points), dated);
    }

    /** Whether a speaker has reviewed the texts of this package in a language; if not, the therapist must be told. */
    public boolean reviewed(Language language) {
        return wordsOf(language).reviewed();
    }

    private LetterContent content(ReferralLetter letter) {
        return new LetterContent(letter, wordsOf(letter.envelope().language()));
    }

    private Words wordsOf(Language language) {
        Words found = words.get(language);
        if (found == null) {
            throw new IllegalStateException("no words for " + language);
        }
        return found;
    }
}
