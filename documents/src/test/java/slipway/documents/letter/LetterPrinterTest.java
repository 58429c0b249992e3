package slipway.documents.letter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.documents.pdf.PdfText;
import slipway.documents.pdf.PdfUa;
import slipway.documents.pdf.Printed;
import slipway.exercises.exercise.Language;

class LetterPrinterTest {
    private static final LetterPrinter PRINTER = new LetterPrinter(new PdfEngine());
    private static final List<String> IN_ORDER = List.of(
            "Referral letter",
            "March 4, 2026",
            "Emergency department",
            "R. Almond, PT, Harbour Street Clinic (invented)",
            "555-0142",
            "Marta Quill",
            "July 19, 1961",
            "555-0177",
            "Emergency: to be seen now",
            "Newly numb between the legs and around the anus: yes",
            "since March 3, 2026",
            "Emergency sign of cauda equina syndrome",
            "No nerve glides and no home exercises were given.",
            "not a diagnosis",
            "do not exclude a serious cause",
            "Signed by the writer",
            "Clearance",
            "Seen by",
            "Outcome",
            "Glides: yes, no, limits",
            "Signed");

    @ParameterizedTest
    @EnumSource(Paper.class)
    void isOneAccessiblePage(Paper paper) throws Exception {
        for (Language language : Language.values()) {
            Printed printed = PRINTER.print(SampleLetters.emergency(language), paper);
            assertThat(printed.pageCount()).isEqualTo(1);
            assertThat(PdfUa.violations(printed.pdf()))
                    .as("%s %s", language, paper)
                    .isEmpty();
        }
    }

    @Test
    void pdfAndTextSayTheSameInTheSameOrder() throws IOException {
        ReferralLetter letter = SampleLetters.emergency(Language.EN);
        String text = PRINTER.text(letter).replaceAll("\\s+", " ");
        String pdf = PdfText.inReadingOrder(PRINTER.print(letter, Paper.A4).pdf());
        assertThat(text).containsSubsequence(IN_ORDER);
        assertThat(pdf).containsSubsequence(IN_ORDER);
    }

    @Test
    void whatIsMissingIsAVisibleBlank() throws Exception {
        String text = PRINTER.text(SampleLetters.blank());
        for (String label :
                List.of("To", "Phone", "Person referred", "Born", "When", "Seen by", "Signed by the writer")) {
            assertThat(text).containsPattern(Pattern.compile("(?m)^ *" + label + ": _{8,}$"));
        }
        assertThat(text).contains("- ________");
        Printed printed = PRINTER.print(SampleLetters.blank(), Paper.LETTER);
        assertThat(PdfUa.violations(printed.pdf())).isEmpty();
        assertThat(printed.pageCount()).isEqualTo(1);
    }

    @Test
    void linesOfTheTextAreShort() {
        assertThat(PRINTER.text(SampleLetters.emergency(Language.ES)).lines()).allMatch(line -> line.length() <= 78);
    }

    @Test
    void aLongLetterGoesOnRatherThanLoseAFinding() throws IOException {
        ReferralLetter one = SampleLetters.emergency(Language.EN);
        var last = new ReferralLetter.Finding("The very last finding", "today", "");
        var many = new ArrayList<>(Collections.nCopies(60, one.found().get(0)));
        many.add(last);
        ReferralLetter letter =
                new ReferralLetter(one.envelope(), one.person(), one.urgency(), many, one.done(), one.notes(), "");
        Printed printed = PRINTER.print(letter, Paper.A4);
        assertThat(printed.pageCount()).isGreaterThan(1);
        assertThat(PdfText.inReadingOrder(printed.pdf())).contains(last.what(), "Seen by");
    }

    @Test
    void aLetterWithoutAFindingIsRefused() {
        ReferralLetter one = SampleLetters.emergency(Language.EN);
        assertThatThrownBy(() -> new ReferralLetter(
                        one.envelope(), one.person(), one.urgency(), List.of(), one.done(), one.notes(), ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least one finding");
    }
}
