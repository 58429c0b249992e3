package slipway.documents.sheet;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import slipway.documents.pdf.PdfEngine;
import slipway.documents.pdf.Printed;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;

/** Puts home sheets on paper. Safe for use by several threads; keep one. */
public final class HomeSheetPrinter {
    private final PdfEngine engine;
    private final Map<Language, Words> words = new EnumMap<>(Language.class);

    public HomeSheetPrinter(PdfEngine engine) {
        this.engine = engine;
        for (Language language : Language.values()) {
            words.put(language, Words.beside(HomeSheetPrinter.class, language));
        }
    }

    /**
     * Prints a sheet as tagged PDF (PDF/UA-1). An exercise never runs over the end of a page; pictures shrink to keep
     * that. The file is dated with the day on which the sheet was given.
     *
     * @throws IllegalArgumentException if an exercise is too long for one page; all such exercises are named
     */
    public Printed print(HomeSheet sheet, SheetFormat format) {
        List<PictureLayout> choices = PictureLayout.choices(sheet, format);
        int[] chosen = new int[sheet.exercises().size()];
        while (true) {
            List<PictureLayout> pictures =
                    Arrays.stream(chosen).mapToObj(choices::get).toList();
            Printed printed = engine.print(
                    new SheetLayout(sheet, format, wordsOf(sheet.language()), pictures).page(), startOfDay(sheet));
            List<Integer> split = splitExercises(sheet, printed);
            if (split.isEmpty()) {
                return printed;
            }
            if (split.stream().anyMatch(i -> chosen[i] + 1 == choices.size())) {
                throw new IllegalArgumentException("an exercise must fit on one page (%s paper, %s type), too long: %s"
                        .formatted(format.paper(), format.type(), named(sheet, split)));
            }
            split.forEach(i -> chosen[i]++);
        }
    }

    private static Instant startOfDay(HomeSheet sheet) {
        return sheet.head().given().atStartOfDay().toInstant(ZoneOffset.UTC);
    }

    /**
     * Whether a speaker has reviewed the texts of this package in a language. If not, whoever prints a sheet must be
     * told beside it; the sheet itself does not say so.
     */
    public boolean reviewed(Language language) {
        return wordsOf(language).reviewed();
    }

    private Words wordsOf(Language language) {
        Words found = words.get(language);
        if (found == null) {
            throw new IllegalStateException("no words for " + language);
        }
        return found;
    }

    private static List<Integer> splitExercises(HomeSheet sheet, Printed printed) {
        return IntStream.range(0, sheet.exercises().size())
                .filter(i -> printed.getPlace(ExerciseSection.id(i)).split())
                .boxed()
                .toList();
    }

    private static String named(HomeSheet sheet, List<Integer> numbers) {
        return String.join(
                ", ",
                numbers.stream()
                        .map(i -> "exercises[%d] \"%s\""
                                .formatted(i, sheet.exercises().get(i).name()))
                        .toList());
    }
}
