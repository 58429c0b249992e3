package slipway.app;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import slipway.app.nerve.CalibrateCommand;
import slipway.app.nerve.PredictCommand;

/** The command line of Slipway. */
@Command(
        name = "slipway",
        mixinStandardHelpOptions = true,
        subcommands = {CalibrateCommand.class, PredictCommand.class},
        version = "slipway 0.1.0",
        description = "A workbench for physical therapists who treat people with an irritated or entrapped nerve.")
public final class Main {
    private Main() {}

    /** Runs one command and exits with its status. */
    public static void main(String[] args) {
        System.exit(new CommandLine(new Main()).execute(args));
    }
}
