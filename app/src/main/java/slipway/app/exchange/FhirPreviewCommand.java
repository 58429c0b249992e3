package slipway.app.exchange;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.app.console.InputFiles;
import slipway.app.papers.EpisodeInput;
import slipway.care.facts.EpisodeFacts;
import slipway.exchange.fhir.FhirImport;
import slipway.exchange.fhir.Preview;
import slipway.exchange.fhir.RefusedException;

/** {@code slipway fhir preview}. */
@Command(
        name = "preview",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Shows what a FHIR R4 bundle (JSON) would change in a case: person, diagnoses, referral, scores. Nothing is"
                    + " changed. What is left out, or not understood, is listed with its place."
        })
final class FhirPreviewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "BUNDLE.json", description = "The bundle.")
    private Path bundle = Path.of("");

    @Option(
            names = "--case",
            paramLabel = "CASE.yaml",
            description = "Case that it would go into; without one the bundle is compared with nothing.")
    private @Nullable Path file;

    @Option(names = "--episode", paramLabel = "EPISODE.yaml", description = "What is known of the episode of the case.")
    private @Nullable Path episode;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Preview preview;
        try {
            preview = FhirImport.preview(InputFiles.read(bundle), current());
        } catch (RefusedException e) {
            throw new BadInputException(bundle + ": " + e.getMessage());
        }
        PreviewText.print(preview, out);
        return ExitStatus.OK;
    }

    private Optional<EpisodeFacts> current() {
        if (file == null) {
            if (episode != null) {
                throw new BadInputException("--episode needs --case, the case that it belongs to");
            }
            return Optional.empty();
        }
        return Optional.of(EpisodeInput.facts(file, episode));
    }
}
