package slipway.app.plan;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.Version;
import slipway.app.console.DateOption;
import slipway.app.console.ExitStatus;
import slipway.app.console.InputFiles;
import slipway.app.console.WholeFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;
import slipway.documents.visit.PlanJson;
import slipway.documents.visit.PlanText;
import slipway.exercises.exercise.Language;

/** {@code slipway plan}: a person in, a plan out. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Reads the case file of one person and proposes a plan: how much load this nerve tolerates and how sure"
                    + " that is, and for each exercise the range, the dose, the glide and the highest load at the"
                    + " suspected place against the tolerance.",
            "",
            "With --out it writes plan.json, plan.txt, load-ruler.svg and the sheets for home (sheet-en-a4.pdf, sheet-en-letter.pdf,"
                    + " and those in the person's language), or letter.pdf and letter.txt when the screening asks for a"
                    + " referral. Files that are there are replaced only whole.",
            "",
            "The plan is a proposal: the therapist tries each exercise in the room, decides, and signs. Not a"
                    + " diagnosis. If the screening finds danger or is incomplete there is no plan and the exit status"
                    + " is 3."
        })
public final class PlanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "CASE.yaml", description = "Case file; 'slipway schema case' describes it.")
    private Path file = Path.of("");

    @Option(names = "--out", paramLabel = "DIR", description = "Folder for the files; made if it is not there.")
    private @Nullable Path out;

    @Option(
            names = "--format",
            description = "What is printed: text or json; default ${DEFAULT-VALUE}.",
            defaultValue = "text")
    private Format format = Format.text;

    @Option(
            names = "--date",
            converter = DateOption.class,
            paramLabel = "YYYY-MM-DD",
            description = "Date on the papers; default today.")
    private @Nullable LocalDate date;

    enum Format {
        text,
        json
    }

    @Override
    public Integer call() {
        var caseFile = CaseFiles.read(InputFiles.read(file), file.toString());
        VisitPlan visit = Visit.plan(caseFile, Version.NUMBER);
        // Told before any file is made: a full disk must not keep an emergency from the reader.
        PrintWriter print = spec.commandLine().getOut();
        print.print(format == Format.json ? PlanJson.of(visit) : PlanText.of(visit));
        print.flush();
        Optional<Path> folder = Optional.ofNullable(out);
        Map<Path, byte[]> files =
                folder.map(dir -> PlanFiles.of(visit, dir, today())).orElse(Map.of());
        WholeFile.writeAll(files);
        tell(visit, files);
        return visit.stopped() ? ExitStatus.NO_PLAN : ExitStatus.OK;
    }

    private LocalDate today() {
        return date == null ? LocalDate.now(java.time.ZoneId.systemDefault()) : date;
    }

    private void tell(VisitPlan visit, Map<Path, byte[]> files) {
        PrintWriter err = spec.commandLine().getErr();
        files.keySet().forEach(path -> err.println("written: " + path));
        if (visit.file().episode().language() == Language.ES && !visit.stopped()) {
            err.println("The Spanish texts have not yet been reviewed by a speaker; read them with the person.");
        }
        err.flush();
    }
}
