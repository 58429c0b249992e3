package slipway.app.plan;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import slipway.care.figure.LoadRulers;
import slipway.care.visit.VisitPlan;
import slipway.documents.letter.LetterPrinter;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.documents.sheet.HomeSheetPrinter;
import slipway.documents.sheet.SheetFormat;
import slipway.documents.visit.LetterOfVisit;
import slipway.documents.visit.PlanJson;
import slipway.documents.visit.PlanText;
import slipway.documents.visit.SheetOfVisit;
import slipway.exercises.exercise.Language;
import slipway.pictures.look.Palette;
import slipway.pictures.ruler.LoadRuler;

/** The files that a plan comes out as. */
final class PlanFiles {
    private static final String VERSION_OF_A_FIRST_SHEET = "1";

    private static final int RULER_WIDTH = 760;

    private PlanFiles() {}

    /** Content by file name within the folder: the plan, and sheets or the letter, as far as there are any. */
    static Map<Path, byte[]> of(VisitPlan visit, Path folder, LocalDate today) {
        var files = new LinkedHashMap<Path, byte[]>();
        files.put(folder.resolve("plan.json"), utf8(PlanJson.of(visit)));
        files.put(folder.resolve("plan.txt"), utf8(PlanText.of(visit)));
        LoadRulers.of(visit)
                .ifPresent(scale -> files.put(
                        folder.resolve("load-ruler.svg"),
                        utf8(LoadRuler.svg(scale, Palette.PAPER, RULER_WIDTH, "load"))));
        var engine = new PdfEngine();
        if (LetterOfVisit.needed(visit)) {
            var letter = LetterOfVisit.of(visit, Language.EN, today);
            var printer = new LetterPrinter(engine);
            files.put(
                    folder.resolve("letter.pdf"),
                    printer.print(letter, Paper.A4).pdf());
            files.put(folder.resolve("letter.txt"), utf8(printer.text(letter)));
        } else if (!visit.stopped() && !visit.given().isEmpty()) {
            sheets(visit, folder, today, new HomeSheetPrinter(engine), files);
        }
        return files;
    }

    private static void sheets(
            VisitPlan visit, Path folder, LocalDate today, HomeSheetPrinter printer, Map<Path, byte[]> files) {
        Set<Language> languages =
                new LinkedHashSet<>(List.of(Language.EN, visit.file().episode().language()));
        for (Language language : languages) {
            var sheet = SheetOfVisit.of(visit, language, today, VERSION_OF_A_FIRST_SHEET);
            for (Paper paper : Paper.values()) {
                String name = "sheet-%s-%s.pdf"
                        .formatted(language.code(), paper.name().toLowerCase(Locale.ROOT));
                var format = new SheetFormat(paper, SheetFormat.Type.NORMAL);
                files.put(folder.resolve(name), printer.print(sheet, format).pdf());
            }
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
