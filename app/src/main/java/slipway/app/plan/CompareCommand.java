package slipway.app.plan;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.Version;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.app.console.InputFiles;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.visit.Comparison;
import slipway.reasoning.plan.PlannedExercise;
import slipway.reasoning.tolerance.Interval;

/** {@code slipway compare}: two exercises for one person. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Compares two exercises for one person: range, glide and highest load at the likeliest place, glide for"
                    + " the load, and how sure the difference is.",
            "",
            "Both are designed for this person first, with the same tolerance and the same draws, so that what they"
                    + " have in common cancels. 'slipway exercises' lists their ids.",
            "",
            "Which one is given stays the therapist's decision."
        })
public final class CompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "CASE.yaml", description = "Case file.")
    private Path file = Path.of("");

    @Parameters(index = "1", paramLabel = "FIRST", description = "Id of an exercise.")
    private String first = "";

    @Parameters(index = "2", paramLabel = "SECOND", description = "Id of another one.")
    private String second = "";

    @Override
    public Integer call() {
        CaseFile caseFile = CaseFiles.read(InputFiles.read(file), file.toString());
        Comparison comparison;
        try {
            comparison = Comparison.of(caseFile, first, second, Version.NUMBER);
        } catch (IllegalArgumentException e) {
            throw new BadInputException("slipway: " + e.getMessage());
        }
        print(comparison);
        return ExitStatus.OK;
    }

    private void print(Comparison comparison) {
        PrintWriter out = spec.commandLine().getOut();
        out.printf("at the %s%n%n", comparison.site());
        out.printf(
                "%-28s %-24s %-24s %14s %14s%n", "exercise", "glide, mm", "highest load, %", "mm per %", "above limit");
        for (PlannedExercise exercise : comparison.planned()) {
            var effect = exercise.effect();
            out.printf(
                    Locale.ROOT,
                    "%-28s %-24s %-24s %14.1f %12.0f %%%n",
                    exercise.id(),
                    interval(effect.glideMm()),
                    interval(effect.peakLoadPct()),
                    effect.glideToLoad(),
                    100 * effect.probabilityAboveLimit());
        }
        out.printf(
                Locale.ROOT,
                "%n%s glides more in %.0f %% of the draws and strains this place more in %.0f %%.%n",
                first,
                100 * comparison.firstGlidesMore(),
                100 * comparison.firstLoadsMore());
        out.flush();
    }

    private static String interval(Interval interval) {
        return String.format(Locale.ROOT, "%.1f (%.1f to %.1f)", interval.median(), interval.low(), interval.high());
    }
}
