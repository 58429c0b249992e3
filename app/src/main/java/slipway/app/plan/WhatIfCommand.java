package slipway.app.plan;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.Version;
import slipway.app.console.ExitStatus;
import slipway.app.console.InputFiles;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.visit.WhatIf;

/** {@code slipway what-if}: which measurement a plan hangs on. */
@Command(
        name = "what-if",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Shows what would change a plan, so that you know which measurement is worth repeating.",
            "",
            "Plans the case again with each onset angle one error of measurement up and down, with each suspected"
                    + " place alone, and with the stature up and down; prints the tolerance and how far each exercise"
                    + " would go. A line that differs much from the first points at what to measure again.",
            "",
            "The proposal stays the one of 'slipway plan'; the therapist decides."
        })
public final class WhatIfCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "CASE.yaml", description = "Case file.")
    private Path file = Path.of("");

    @Override
    public Integer call() {
        CaseFile caseFile = CaseFiles.read(InputFiles.read(file), file.toString());
        Optional<WhatIf> whatIf = WhatIf.of(caseFile, Version.NUMBER);
        if (whatIf.isEmpty()) {
            spec.commandLine().getErr().println(file + ": the screening stops the plan ('slipway screen' says why)");
            return ExitStatus.NO_PLAN;
        }
        print(whatIf.get());
        return ExitStatus.OK;
    }

    private void print(WhatIf whatIf) {
        PrintWriter out = spec.commandLine().getOut();
        out.printf("%-52s %10s", "input", "tolerance");
        whatIf.exerciseIds().forEach(id -> out.printf("  %20s", shortened(id)));
        out.println();
        for (WhatIf.Outcome outcome : whatIf.outcomes()) {
            out.printf(
                    Locale.ROOT,
                    "%-52s %10s",
                    outcome.what(),
                    outcome.tolerancePct()
                            .map(t -> String.format(Locale.ROOT, "%.1f %%", t))
                            .orElse("-"));
            for (String id : whatIf.exerciseIds()) {
                Double end = outcome.ends().get(id);
                out.printf("  %20s", end == null ? "not given" : String.format(Locale.ROOT, "to %.0f deg", end));
            }
            out.println();
        }
        out.println();
        out.println("Tolerance at the likeliest place, % strain above rest; furthest angle of the leading joint.");
        out.flush();
    }

    private static String shortened(String id) {
        return id.length() <= 20 ? id : id.substring(0, 19) + "…";
    }
}
