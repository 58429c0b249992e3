package slipway.documents.letter;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.exercises.exercise.Language;

/** Writes sample letters into a folder, to be looked at: run it with the folder as its argument. */
final class WriteLetters {
    private WriteLetters() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments.length > 0 ? arguments[0] : "target/samples"));
        var printer = new LetterPrinter(new PdfEngine());
        for (Language language : Language.values()) {
            ReferralLetter letter = SampleLetters.emergency(language);
            Files.write(
                    folder.resolve("letter-%s.pdf".formatted(language.code())),
                    printer.print(letter, Paper.A4).pdf());
            Files.writeString(folder.resolve("letter-%s.txt".formatted(language.code())), printer.text(letter));
        }
        Files.write(
                folder.resolve("letter-blank.pdf"),
                printer.print(SampleLetters.blank(), Paper.LETTER).pdf());
    }
}
