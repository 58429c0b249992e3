package slipway.documents.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.documents.pdf.PdfText;
import slipway.documents.pdf.PdfUa;
import slipway.documents.pdf.Printed;
import slipway.exercises.exercise.Language;

class HomeSheetPrinterTest {
    private static final HomeSheetPrinter PRINTER = new HomeSheetPrinter(new PdfEngine());
    private static final SheetFormat A4 = new SheetFormat(Paper.A4, SheetFormat.Type.NORMAL);

    static Stream<SheetFormat> formats() {
        return Stream.of(Paper.values())
                .flatMap(paper -> Stream.of(SheetFormat.Type.values()).map(type -> new SheetFormat(paper, type)));
    }

    @ParameterizedTest
    @MethodSource("formats")
    void everyVariantIsAccessibleAndSplitsNoExercise(SheetFormat format) throws Exception {
        for (Language language : Language.values()) {
            Printed printed = PRINTER.print(SampleSheets.sheet(language, 2), format);
            assertThat(PdfUa.violations(printed.pdf()))
                    .as("%s %s", language, format)
                    .isEmpty();
            assertThat(printed.places()).containsKeys("exercise-1", "exercise-2", "diary");
            assertThat(printed.places().values()).noneMatch(Printed.Place::split);
        }
    }

    @Test
    void strangeNamesAndEmptyListsStayAccessible() throws Exception {
        List<String> names = List.of(
                "ليلى الخطيب", "רות כהן", "🙂 Ωμέγα", "W".repeat(200), "<b>&", "Maria Konstanze ".repeat(12), "李小龙");
        for (String name : names) {
            Printed printed = PRINTER.print(SampleSheets.sheet(name, Language.EN, 0), A4);
            assertThat(PdfUa.violations(printed.pdf())).as(name).isEmpty();
        }
    }

    @Test
    void theTextIsReadInTheOrderOfUse() throws IOException {
        HomeSheet sheet = SampleSheets.sheet(Language.EN, 2);
        SheetExercise ankle = sheet.exercises().get(0);
        String read = PdfText.inReadingOrder(PRINTER.print(sheet, A4).pdf());
        assertThat(read)
                .containsSubsequence(
                        "Marta Quill",
                        "For your right leg",
                        "March 4, 2026",
                        "Sheet version: 3",
                        "555-0142",
                        "Emergency",
                        "call 911 now",
                        "between the legs, genitals or around the anus, where you wipe",
                        "Stand up and walk a little",
                        "within 2 minutes",
                        "not a diagnosis",
                        ankle.name(),
                        ankle.pictures().startShows(),
                        ankle.pictures().endShows(),
                        ankle.steps().get(0),
                        ankle.steps().get(3),
                        "Your dose",
                        "Repeat 8 times",
                        "3 seconds each way",
                        "Do this 2 times a day",
                        "On a harder day",
                        "Repeat 5 times",
                        "Do this once a day",
                        "You may feel",
                        "a light pull",
                        "Stop if",
                        "a new pain starts",
                        sheet.exercises().get(1).name(),
                        "Repeat 10 times",
                        "2 rounds",
                        "Take care",
                        "Two weeks",
                        "Wed Mar 4",
                        "Tue Mar 17");
    }

    @Test
    void spanishSaysTheSameInSpanish() throws IOException {
        String read = PdfText.inReadingOrder(
                PRINTER.print(SampleSheets.sheet(Language.ES, 2), A4).pdf());
        assertThat(read)
                .containsSubsequence(
                        "Para su pierna derecha",
                        "llame al 112",
                        "entre las piernas, los genitales o el ano",
                        "no es un diagnóstico",
                        "Repita 8 veces",
                        "2 rondas",
                        "Mantenga 20 segundos",
                        "Dos semanas");
    }

    @Test
    void everyPageNamesThePersonTheSideAndTheEmergencyNumber() throws IOException {
        try (PDDocument document = Loader.loadPDF(
                PRINTER.print(SampleSheets.sheet(Language.EN, 3), A4).pdf())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                var stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(document).replaceAll("[\\s\u00a0]+", " "))
                        .contains("Marta Quill, right leg, version 3. Emergency: 911")
                        .contains("Page %d of %d".formatted(page, document.getNumberOfPages()));
            }
        }
    }

    @Test
    void twoExercisesShareAPageInNormalType() {
        Printed printed = PRINTER.print(SampleSheets.sheet(Language.EN, 4), A4);
        assertThat(printed.pageCount()).isEqualTo(4);
        assertThat(printed.getPlace("exercise-1").firstPage())
                .isEqualTo(printed.getPlace("exercise-2").firstPage());
    }

    @Test
    void withoutAGuideThereIsNoCodeAndNoWordOfIt() throws IOException {
        HomeSheet with = SampleSheets.sheet(Language.EN, 1);
        HomeSheet without = new HomeSheet(
                with.head(), with.language(), List.of(), with.rules(), with.exercises(), List.of(), Optional.empty());
        assertThat(PdfText.inReadingOrder(PRINTER.print(with, A4).pdf()))
                .contains(SampleSheets.GUIDE)
                .contains("follow your phone");
        assertThat(PdfText.inReadingOrder(PRINTER.print(without, A4).pdf())).doesNotContain("follow your phone");
    }

    @Test
    void theSameSheetGivesTheSameFile() {
        HomeSheet sheet = SampleSheets.sheet(Language.EN, 1);
        assertThat(PRINTER.print(sheet, A4).pdf())
                .isEqualTo(
                        new HomeSheetPrinter(new PdfEngine()).print(sheet, A4).pdf());
    }

    @Test
    void anExerciseTooLongForAPageIsNamed() {
        SheetExercise ankle = SampleSheets.exercises(Language.EN).get(0);
        var endless = new SheetExercise(
                "Endless",
                ankle.moves(),
                ankle.pictures(),
                List.of(),
                Collections.nCopies(5, "Breathe in and breathe out again. ".repeat(40)),
                ankle.doses(),
                ankle.feelings(),
                List.of());
        HomeSheet full = SampleSheets.sheet(Language.EN, 1);
        HomeSheet sheet = new HomeSheet(
                full.head(), full.language(), List.of(), full.rules(), List.of(endless), List.of(), Optional.empty());
        assertThatThrownBy(() -> PRINTER.print(sheet, new SheetFormat(Paper.LETTER, SheetFormat.Type.LARGE)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("exercises[0] \"Endless\"")
                .hasMessageContaining("LETTER");
    }
}
