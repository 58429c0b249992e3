package slipway.documents.sheet;

import java.util.List;
import java.util.stream.IntStream;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.exercises.exercise.Language;

/** Prints sheets with three exercises for some seconds on all cores and says how many a second; a size, no benchmark. */
final class SheetsPerSecond {
    private static final int WARM_UP = 40;
    private static final int COUNTED = 200;

    private SheetsPerSecond() {}

    public static void main(String[] arguments) {
        var printer = new HomeSheetPrinter(new PdfEngine());
        var format = new SheetFormat(Paper.A4, SheetFormat.Type.NORMAL);
        List<HomeSheet> sheets = List.of(SampleSheets.sheet(Language.EN, 3), SampleSheets.sheet(Language.ES, 2));
        seconds(printer, format, sheets, WARM_UP);
        double seconds = seconds(printer, format, sheets, COUNTED);
        System.out.printf(
                "%d sheets in %.1f s: %.1f a second on %d cores%n",
                COUNTED, seconds, COUNTED / seconds, Runtime.getRuntime().availableProcessors());
    }

    private static double seconds(HomeSheetPrinter printer, SheetFormat format, List<HomeSheet> sheets, int count) {
        long start = System.nanoTime();
        IntStream.range(0, count).parallel().forEach(i -> printer.print(sheets.get(i % sheets.size()), format));
        return (System.nanoTime() - start) / 1e9;
    }
}
