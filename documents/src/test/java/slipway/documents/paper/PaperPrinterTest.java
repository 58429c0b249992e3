package slipway.documents.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.documents.pdf.PdfText;
import slipway.documents.pdf.PdfUa;
import slipway.documents.pdf.Printed;

class PaperPrinterTest {
    private static final PaperPrinter PRINTER = new PaperPrinter(new PdfEngine());

    @ParameterizedTest
    @EnumSource(PaperKind.class)
    void isAccessibleAndHoldsEverySentenceInOrder(PaperKind kind) throws Exception {
        PaperInput input =
                kind == PaperKind.REFERRAL ? SamplePapers.bare("red-flag-saddle-numbness") : SamplePapers.full();
        PaperText text = PaperWriter.write(kind, input);
        Printed printed = PRINTER.print(text, PaperFrame.of(kind, input), Paper.A4);
        assertThat(PdfUa.violations(printed.pdf())).isEmpty();
        assertThat(printed.missingSigns()).isEmpty();
        assertThat(letters(PdfText.inReadingOrder(printed.pdf())))
                .containsSubsequence(text.sentences().stream()
                        .map(Sentence::text)
                        .map(PaperPrinterTest::letters)
                        .toList());
    }

    @Test
    void theProgressReportShowsRulerAndCourseInWordsToo() throws Exception {
        PaperFrame frame = PaperFrame.of(PaperKind.PROGRESS_REPORT, SamplePapers.full());
        assertThat(frame.ruler().orElseThrow().alternative()).contains("Tolerance about");
        assertThat(frame.course().orElseThrow().alternative().toLowerCase(Locale.ROOT))
                .contains("lower extremity functional scale");
    }

    @Test
    void aPartWhoseSentencesWereAllTakenOutIsNotPrinted() throws Exception {
        PaperInput input = SamplePapers.full();
        PaperText text = PaperWriter.write(PaperKind.LETTER, input);
        Part last = text.parts().get(text.parts().size() - 1);
        for (Sentence sentence : last.sentences()) {
            text = text.without(sentence.id());
        }
        PaperFrame frame = PaperFrame.of(PaperKind.LETTER, input);
        assertThat(PdfText.inReadingOrder(PRINTER.print(text, frame, Paper.A4).pdf()))
                .doesNotContain(last.heading());
        assertThat(PRINTER.text(text, frame)).doesNotContain("\n" + last.heading() + "\n");
    }

    @Test
    void whatStandsAroundASignedPaperPrintsTheSameFromItsText() {
        PaperInput input = SamplePapers.full();
        PaperText text = PaperWriter.write(PaperKind.PROGRESS_REPORT, input);
        PaperFrame frame = PaperFrame.of(PaperKind.PROGRESS_REPORT, input);
        String kept = PaperJson.write(text, frame);
        assertThat(PaperJson.read(kept)).isEqualTo(text);
        assertThat(PaperJson.frame(PaperJson.write(text))).isEmpty();
        assertThat(PRINTER.print(text, PaperJson.frame(kept).orElseThrow(), Paper.A4)
                        .pdf())
                .isEqualTo(PRINTER.print(text, frame, Paper.A4).pdf());
    }

    @Test
    void theRelapsePlanIsOnePage() {
        PaperInput input = SamplePapers.full();
        Printed printed = PRINTER.print(
                PaperWriter.write(PaperKind.RELAPSE_PLAN, input),
                PaperFrame.of(PaperKind.RELAPSE_PLAN, input),
                Paper.LETTER);
        assertThat(printed.pageCount()).isEqualTo(1);
    }

    @Test
    void whatIsMissingIsAVisibleBlank() throws Exception {
        PaperInput input = SamplePapers.bare("behaves-unlike-nerve");
        PaperText text = PaperWriter.write(PaperKind.LETTER, input);
        Printed printed = PRINTER.print(text, PaperFrame.of(PaperKind.LETTER, input), Paper.A4);
        String seen = PdfText.inReadingOrder(printed.pdf());
        assertThat(List.of("Written by", "To", "Referred by: not recorded", "Outcome measures: not recorded"))
                .allMatch(seen::contains);
    }

    /** Without spaces, so that lines may break anywhere. */
    private static String letters(String text) {
        return text.codePoints()
                .filter(c -> !Character.isWhitespace(c) && c != 0xAD)
                .mapToObj(Character::toString)
                .collect(Collectors.joining());
    }
}
