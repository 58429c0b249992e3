package slipway.app.exchange;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code slipway fhir}. */
@Command(
        name = "fhir",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        subcommands = {FhirExportCommand.class, FhirPreviewCommand.class, FhirTakeCommand.class},
        description = {
            "FHIR R4: writes an episode as a bundle for another system, shows what a bundle from another system would"
                    + " change, or takes it over into the records. Nothing is sent anywhere."
        })
public final class FhirCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
