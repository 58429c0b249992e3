package slipway.documents.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.exercises.exercise.Language;

/** Writes sample sheets into a folder, to be looked at: run it with the folder as its argument. */
final class WriteSamples {
    private WriteSamples() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments.length > 0 ? arguments[0] : "target/samples"));
        var printer = new HomeSheetPrinter(new PdfEngine());
        for (Map.Entry<String, HomeSheet> sample : samples().entrySet()) {
            for (Paper paper : Paper.values()) {
                for (SheetFormat.Type type : SheetFormat.Type.values()) {
                    String name = "%s-%s-%s.pdf"
                            .formatted(sample.getKey(), paper, type)
                            .toLowerCase(Locale.ROOT);
                    Files.write(
                            folder.resolve(name),
                            printer.print(sample.getValue(), new SheetFormat(paper, type))
                                    .pdf());
                }
            }
        }
    }

    private static Map<String, HomeSheet> samples() {
        var samples = new LinkedHashMap<String, HomeSheet>();
        samples.put("sheet-en", SampleSheets.sheet(Language.EN, 3));
        samples.put("sheet-en4", SampleSheets.sheet(Language.EN, 4));
        samples.put("sheet-es", SampleSheets.sheet(Language.ES, 2));
        samples.put(
                "name-long",
                SampleSheets.sheet("Maximiliana-Konstanze ".repeat(10).substring(0, 200), Language.EN, 1));
        samples.put("name-one-word", SampleSheets.sheet("W".repeat(200), Language.EN, 1));
        samples.put("name-rtl", SampleSheets.sheet("ליאורה כהן مريم الخطيب 🙂👩‍⚕️ Ωμέγα 李小龙", Language.EN, 1));
        samples.put("empty", empty());
        return samples;
    }

    private static HomeSheet empty() {
        HomeSheet full = SampleSheets.sheet(Language.EN, 0);
        return new HomeSheet(
                full.head(), full.language(), List.of(), full.rules(), List.of(), List.of(), Optional.empty());
    }
}
