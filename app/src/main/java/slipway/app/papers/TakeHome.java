package slipway.app.papers;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slipway.app.Version;
import slipway.app.console.DateOption;
import slipway.app.console.ExitStatus;
import slipway.app.console.InputFiles;
import slipway.app.console.WholeFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;
import slipway.documents.visit.PlanText;
import slipway.exercises.exercise.Language;

/** What the commands have in common that write something for the person: the options, the plan, and the refusals. */
final class TakeHome {
    /** Of whatever goes home from one case file; the phone and the paper show the same. */
    static final String FIRST_VERSION = "1";

    @Parameters(paramLabel = "CASE.yaml", description = "Case file; 'slipway schema case' describes it.")
    private Path file = Path.of("");

    @Option(
            names = "--language",
            paramLabel = "en|es",
            description = "Language; default that of the case file. Spanish is not yet reviewed by a speaker.")
    private @Nullable Language language;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "Folder; made if it is not there.")
    private Path out = Path.of("");

    @Option(
            names = "--date",
            converter = DateOption.class,
            paramLabel = "YYYY-MM-DD",
            description = "Date on it; default today.")
    private @Nullable LocalDate date;

    /** A file that goes home: its name and its content. */
    record Made(String name, byte[] content) {}

    /** Plans, writes what is made from the plan, and tells; nothing is written without a plan that gives exercises. */
    int write(PrintWriter err, MadeFrom maker) {
        VisitPlan visit = Visit.plan(CaseFiles.read(InputFiles.read(file), file.toString()), Version.NUMBER);
        if (visit.stopped() || visit.given().isEmpty()) {
            err.println(
                    visit.stopped()
                            ? "Nothing for home was written: the screening stops the plan."
                            : "Nothing for home was written: the plan gives no exercise.");
            err.println();
            err.print(PlanText.of(visit));
            err.flush();
            return ExitStatus.NO_PLAN;
        }
        Language chosen = language == null ? visit.file().episode().language() : language;
        LocalDate day = date == null ? LocalDate.now(ZoneId.systemDefault()) : date;
        Made made = maker.make(visit, chosen, day);
        Path target = out.resolve(made.name());
        WholeFile.write(target, made.content());
        err.println("written: " + target);
        if (chosen == Language.ES) {
            err.println("The Spanish texts have not yet been reviewed by a speaker; read them with the person.");
        }
        err.flush();
        return ExitStatus.OK;
    }

    /** Makes one file from a plan. */
    interface MadeFrom {
        Made make(VisitPlan visit, Language language, LocalDate day);
    }
}
