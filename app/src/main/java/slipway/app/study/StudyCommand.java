package slipway.app.study;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slipway.app.Version;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.app.console.WholeFile;
import slipway.study.load.LoadTables;
import slipway.study.report.ReportHtml;
import slipway.study.report.StudyCsv;
import slipway.study.report.StudyResults;
import slipway.study.report.SummaryJson;
import slipway.study.report.Verdict;
import slipway.study.run.Simulation;
import slipway.study.run.StudyPlan;
import slipway.study.run.StudyRun;
import slipway.study.run.StudyState;

/** {@code slipway study}: ways of dosing tried on simulated people. */
@Command(
        name = "study",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Tries ways of dosing on simulated people: the program's own, the main comparator (start short of symptoms,"
                    + " change only at visits), others, in plausible worlds and in worlds where an assumption is wrong.",
            "",
            "Writes report.html, study.csv and summary.json. Results are the same for the same seed, whatever the number"
                    + " of threads. Ctrl-C stops and keeps what is done in DIR/unfinished.json; the same command goes on"
                    + " from there.",
            "",
            "A simulation shows what follows from its assumptions. It is not clinical evidence."
        })
public final class StudyCommand implements Callable<Integer> {
    private static final long SAVE_NANOS = 10_000_000_000L;
    /** As a shell has it for a command that was interrupted. */
    private static final int INTERRUPTED = 130;

    private static final long PATIENCE_SECONDS = 60;

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

    @Option(names = "--threads", paramLabel = "N", description = "Default: one for every core.")
    private int threads = Runtime.getRuntime().availableProcessors();

    private volatile boolean cancelled;
    private final CountDownLatch ended = new CountDownLatch(1);
    private long lastSaved = System.nanoTime();

    @Override
    public Integer call() {
        StudyPlan plan = plan();
        var saved = new SavedState(out);
        StudyState state = saved.load(plan);
        Thread stopper = stopper();
        Runtime.getRuntime().addShutdownHook(stopper);
        try {
            run(state, saved);
            if (!state.complete()) {
                saved.save(state);
                spec.commandLine().getErr().println("stopped; the same command goes on from " + saved.file());
                return INTERRUPTED;
            }
            write(state);
            saved.remove();
            return ExitStatus.OK;
        } finally {
            ended.countDown();
            removeHook(stopper);
        }
    }

    private StudyPlan plan() {
        if (threads < 1) {
            throw new BadInputException("--threads must be 1 or more, was " + threads);
        }
        try {
            return new StudyPlan(people, days, seed, Version.NUMBER);
        } catch (IllegalArgumentException e) {
            throw new BadInputException("slipway: " + e.getMessage());
        }
    }

    /** Where a newer Java answers for a file as for a terminal, the one line is rewritten there too: ugly, no more. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean terminal() {
        return System.console() != null;
    }

    private void run(StudyState state, SavedState saved) {
        var simulation = new Simulation(LoadTables.compute());
        var progress = new Progress(spec.commandLine().getErr(), terminal(), state.doneBatches());
        new StudyRun(simulation).run(state, threads, () -> cancelled, () -> {
            progress.tell(state);
            if (System.nanoTime() - lastSaved > SAVE_NANOS) {
                saved.save(state);
                lastSaved = System.nanoTime();
            }
        });
        progress.end();
    }

    /** Asks the run to stop and waits until it has saved, for a process that is ending does not wait by itself. */
    private Thread stopper() {
        return new Thread(() -> {
            cancelled = true;
            try {
                if (!ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                    spec.commandLine()
                            .getErr()
                            .println("slipway: the study did not stop in time; what it saved last stays");
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
    }

    private static void removeHook(Thread stopper) {
        try {
            Runtime.getRuntime().removeShutdownHook(stopper);
        } catch (IllegalStateException e) {
            // The process is ending already; the hook is what waits for us.
        }
    }

    private void write(StudyState state) {
        StudyResults results = StudyResults.of(state);
        var files = new LinkedHashMap<Path, byte[]>();
        files.put(out.resolve("report.html"), bytes(ReportHtml.of(results)));
        files.put(out.resolve("study.csv"), bytes(StudyCsv.of(results)));
        files.put(out.resolve("summary.json"), bytes(SummaryJson.of(results)));
        WholeFile.writeAll(files);
        PrintWriter print = spec.commandLine().getOut();
        print.println(Verdict.of(results).words());
        print.println("A simulation is not clinical evidence.");
        print.flush();
        tell(files);
    }

    private void tell(Map<Path, byte[]> files) {
        PrintWriter err = spec.commandLine().getErr();
        files.keySet().forEach(path -> err.println("written: " + path));
        err.flush();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
