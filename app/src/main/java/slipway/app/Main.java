package slipway.app;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import slipway.app.billing.UnitsCommand;
import slipway.app.console.Failures;
import slipway.app.exchange.FhirCommand;
import slipway.app.exercises.ExercisesCommand;
import slipway.app.locate.AnatomyCommand;
import slipway.app.locate.LocateCommand;
import slipway.app.locate.ScreenCommand;
import slipway.app.nerve.CalibrateCommand;
import slipway.app.nerve.MotionCommand;
import slipway.app.nerve.PostureCommand;
import slipway.app.nerve.PredictCommand;
import slipway.app.nerve.ValidateCommand;
import slipway.app.papers.FigureCommand;
import slipway.app.papers.GuideCommand;
import slipway.app.papers.PaperCommand;
import slipway.app.papers.SheetCommand;
import slipway.app.plan.CompareCommand;
import slipway.app.plan.PlanCommand;
import slipway.app.plan.WhatIfCommand;
import slipway.app.records.AuditCommand;
import slipway.app.records.BackupCommand;
import slipway.app.records.CaseloadCommand;
import slipway.app.records.CodesCommand;
import slipway.app.records.ExportCommand;
import slipway.app.records.ImportCommand;
import slipway.app.records.PersonCommand;
import slipway.app.records.RestoreCommand;
import slipway.app.respond.RespondCommand;
import slipway.app.schema.SchemaCommand;
import slipway.app.serve.DemoCommand;
import slipway.app.serve.ServeCommand;
import slipway.app.study.StudyCommand;

/** The command line of Slipway. */
@Command(
        name = "slipway",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        subcommands = {
            DemoCommand.class,
            ServeCommand.class,
            PlanCommand.class,
            SheetCommand.class,
            GuideCommand.class,
            PaperCommand.class,
            WhatIfCommand.class,
            CompareCommand.class,
            RespondCommand.class,
            ScreenCommand.class,
            LocateCommand.class,
            ExercisesCommand.class,
            FigureCommand.class,
            PostureCommand.class,
            MotionCommand.class,
            AnatomyCommand.class,
            PredictCommand.class,
            CalibrateCommand.class,
            ValidateCommand.class,
            UnitsCommand.class,
            FhirCommand.class,
            ImportCommand.class,
            ExportCommand.class,
            AuditCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            PersonCommand.class,
            CaseloadCommand.class,
            CodesCommand.class,
            StudyCommand.class,
            SchemaCommand.class,
        },
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "A workbench for physical therapists who treat a leg whose symptoms come from an irritated or entrapped nerve.",
            "",
            "From the findings of one person, written as a case file, it screens for danger, estimates how much nerve"
                    + " load this person tolerates, and proposes small movements that slide the nerve below that load,"
                    + " with a sheet for home. Every proposal shows its basis; the therapist decides.",
            "",
            "Not a diagnosis, and no substitute for a licensed clinician's examination and judgement. Local law,"
                    + " protocol and scope of practice come first. In an emergency call the local emergency number.",
            ""
        },
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:done",
            "1:a fault of the program itself",
            "2:the command line or an input file cannot be used; nothing was written",
            "3:no plan, for reasons of safety; the reasons are printed, the letter is written",
            "4:the machine cannot do it: something is missing, or a file cannot be written",
            "5:a check found damage: a trail that was tampered with, or a backup that is not whole"
        },
        footer = {
            "",
            "Start with an example:",
            "  ./slipway plan examples/low-irritability-stiff.yaml --out out/",
            "'slipway COMMAND --help' explains a command, 'slipway schema case' the case file."
        })
public final class Main implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    private Main() {}

    /** Runs one command and exits with its status. */
    public static void main(String[] args) {
        CommandLine line = commandLine()
                .setOut(new PrintWriter(System.out, true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(System.err, true, StandardCharsets.UTF_8));
        int status = line.execute(args);
        line.getOut().flush();
        line.getErr().flush();
        System.exit(status);
    }

    /** The command line with all commands, for running or for tests. */
    public static CommandLine commandLine() {
        var failures = new Failures();
        return new CommandLine(new Main())
                .setExecutionExceptionHandler(failures)
                .setParameterExceptionHandler(failures)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpWidth(100);
    }

    /** Without a command the help is the answer. */
    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
