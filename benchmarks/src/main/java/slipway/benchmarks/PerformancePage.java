package slipway.benchmarks;

import java.io.IOException;
import java.io.Reader;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Rewrites the measured part of {@code docs/performance.md} from what {@code ./bench} measured. */
public final class PerformancePage {
    private static final String FROM = "<!-- written by ./bench from here -->";
    private static final String TO = "<!-- to here -->";

    /** Threads of the benchmark of sheets. */
    private static final int SHEETS_AT_ONCE = 2;

    private static final int MS_PER_SECOND = 1000;

    private final Map<String, Double> scores;
    private final Path work;

    private PerformancePage(Map<String, Double> scores, Path work) {
        this.scores = scores;
        this.work = work;
    }

    /** Takes the folder with the measurements and the page. */
    public static void main(String[] args) throws IOException {
        Path work = Path.of(args[0]);
        Path page = Path.of(args[1]);
        String text = Files.readString(page);
        int from = text.indexOf(FROM);
        int to = text.indexOf(TO);
        if (from < 0 || to < from) {
            throw new IOException(page + " must hold the lines " + FROM + " and " + TO);
        }
        String measured = new PerformancePage(scores(work.resolve("jmh.csv")), work).text();
        Files.writeString(page, text.substring(0, from) + FROM + "\n\n" + measured + "\n" + text.substring(to));
    }

    private static Map<String, Double> scores(Path file) throws IOException {
        var format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        var scores = new HashMap<String, Double>();
        try (Reader reader = Files.newBufferedReader(file)) {
            for (CSVRecord row : format.parse(reader)) {
                String name = row.get("Benchmark");
                scores.put(
                        name.replaceFirst("^slipway\\.benchmarks\\.(papers\\.)?", ""),
                        Double.parseDouble(row.get("Score")));
            }
        }
        return scores;
    }

    private String text() throws IOException {
        return String.join(
                "\n",
                solvers(),
                "",
                wholeTasks(),
                "",
                Files.readString(work.resolve("scaling.md")),
                Files.readString(work.resolve("study.md")),
                Files.readString(work.resolve("start.md")),
                Files.readString(work.resolve("poses.md")),
                machine());
    }

    /** A load far above what one benchmark makes means that others worked there meanwhile. */
    private static String machine() {
        return row(
                "Measured on %s: Java %s, %s, %d processors, load average %.1f at the end.\n",
                LocalDate.now(ZoneOffset.UTC),
                Runtime.version(),
                System.getProperty("os.arch"),
                Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private String solvers() throws IOException {
        double kernel = score("SolveBenchmark.batched");
        double library = score("SolveBenchmark.library");
        double scalar = score("SolveBenchmark.scalar");
        return String.join(
                "\n",
                "| solver | per posture and draw, µs | against the kernel | target |",
                "| --- | --- | --- | --- |",
                row("| kernel of the program (batched over draws) | %.1f | 1 | |", kernel),
                row(
                        "| same equations, dense linear algebra of a library | %.0f | %.0f times slower | ≥ 20 |",
                        library, library / kernel),
                row("| same steps, one draw at a time | %.1f | %.2f times slower | ≥ 4 |", scalar, scalar / kernel),
                inC(kernel));
    }

    private String inC(double kernel) throws IOException {
        Path file = work.resolve("c.txt");
        if (!Files.exists(file)) {
            return "| same steps in C | not measured: no gcc | | ≤ 1.5 |";
        }
        double c = Double.parseDouble(Files.readString(file).strip());
        return row(
                "| same steps in C (-O3 -march=native -fno-math-errno) | %.1f | kernel takes %.2f times as long | ≤ 1.5 |",
                c, kernel / c);
    }

    private String wholeTasks() {
        return String.join(
                "\n",
                List.of(
                        "| whole task, warm | ms | target |",
                        "| --- | --- | --- |",
                        task("plan of three glides, 512 draws, ranges searched", "PlanBenchmark.plan", "< 200"),
                        task("posterior of a case with 60 findings", "LocateBenchmark.rank", "< 5"),
                        task("the same with intervals and basis", "LocateBenchmark.locate", "< 100"),
                        task("answer to one report: rules, filter, proposal", "ResponseBenchmark.report", ""),
                        task("one figure, solved and drawn", "PapersBenchmark.figure", "< 1"),
                        row(
                                "| sheets for home in a second, two at once | %.0f sheets | ≥ 10 sheets |",
                                SHEETS_AT_ONCE * MS_PER_SECOND / score("PapersBenchmark.sheet")),
                        task("moving guide", "PapersBenchmark.guide", ""),
                        task("progress report as PDF", "PapersBenchmark.progressReport", "< 500"),
                        task("episode with 500 reports as FHIR", "PapersBenchmark.fhir", "< 1000")));
    }

    private String task(String what, String benchmark, String target) {
        return row("| %s | %.3g | %s |", what, score(benchmark), target);
    }

    private static String row(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private double score(String benchmark) {
        Double score = scores.get(benchmark);
        if (score == null) {
            throw new IllegalStateException(benchmark + " was not measured; there are " + scores.keySet());
        }
        return score;
    }
}
