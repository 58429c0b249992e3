package slipway.studyspark;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.concurrent.Callable;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slipway.study.load.LoadTables;
import slipway.study.report.ReportHtml;
import slipway.study.report.StudyCsv;
import slipway.study.report.StudyResults;
import slipway.study.report.SummaryJson;
import slipway.study.report.Verdict;
import slipway.study.run.ProgramVersion;
import slipway.study.run.StudyPlan;

/** What {@code spark-submit} starts: the study, and its three files written where the driver runs. */
@Command(
        name = "study-spark",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "The study on simulated people on the machines of a cluster. The same files as 'slipway study' writes.",
            "",
            "A simulation shows what follows from its assumptions. It is not clinical evidence."
        })
public final class StudyJob implements Callable<Integer> {
    private static final int PARTS_FOR_EACH_CORE = 3;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--people", paramLabel = "N", required = true, description = "People in every world, 2 or more.")
    private long people;

    @Option(
            names = "--days",
            paramLabel = "DAYS",
            description = "Days of care; default ${DEFAULT-VALUE}.",
            defaultValue = "56")
    private int days;

    @Option(names = "--seed", paramLabel = "S", description = "Any whole number; default 1.", defaultValue = "1")
    private long seed;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "Folder for the results.")
    private Path out = Path.of("");

    @Option(
            names = "--partitions",
            paramLabel = "N",
            defaultValue = "0",
            description =
                    "Parts that are handed out; default: three for every core that Spark has. No result depends on it.")
    private int partitions;

    /** Runs the job; ends the process with 0 if it went well. */
    public static void main(String[] args) {
        int status = new CommandLine(new StudyJob()).execute(args);
        // Some masters take any end of the process by itself for a failure, even with 0.
        if (status != 0) {
            System.exit(status);
        }
    }

    @Override
    public Integer call() throws IOException {
        if (partitions < 0) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "--partitions must be 0 or more, was " + partitions);
        }
        var plan = new StudyPlan(people, days, seed, ProgramVersion.NUMBER);
        try (JavaSparkContext spark = new JavaSparkContext(new SparkConf().setAppName("slipway-study"))) {
            int parts = partitions > 0 ? partitions : PARTS_FOR_EACH_CORE * spark.defaultParallelism();
            write(StudyResults.of(plan, new SparkStudy(spark, LoadTables.compute()).run(plan, parts)));
        }
        return 0;
    }

    private void write(StudyResults results) throws IOException {
        Files.createDirectories(out);
        put("report.html", ReportHtml.of(results));
        put("study.csv", StudyCsv.of(results));
        put("summary.json", SummaryJson.of(results));
        PrintWriter print = spec.commandLine().getOut();
        print.println(Verdict.of(results).words());
        print.println("A simulation is not clinical evidence.");
        print.flush();
    }

    /** The whole file or the old one. */
    private void put(String name, String text) throws IOException {
        Path unfinished = out.resolve(name + ".unfinished");
        Files.writeString(unfinished, text, StandardCharsets.UTF_8);
        Files.move(unfinished, out.resolve(name), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }
}
