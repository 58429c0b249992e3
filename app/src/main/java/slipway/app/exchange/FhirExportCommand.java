package slipway.app.exchange;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slipway.app.Version;
import slipway.app.console.DateOption;
import slipway.app.console.ExitStatus;
import slipway.app.console.WholeFile;
import slipway.app.papers.EpisodeInput;
import slipway.exchange.fhir.EpisodeBundle;
import slipway.exchange.fhir.Export;
import slipway.exchange.fhir.Fhir;

/** {@code slipway fhir export}. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes an episode as a FHIR R4 bundle (JSON, type collection), to the screen or to a file. It holds the name of"
                    + " the person and all findings: hand it only to whom it is for."
        })
final class FhirExportCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private EpisodeInput episode = new EpisodeInput();

    @Option(names = "--out", paramLabel = "FILE", description = "File to write; default the screen.")
    private @Nullable Path out;

    @Option(
            names = "--date",
            converter = DateOption.class,
            paramLabel = "YYYY-MM-DD",
            description = "Day of the export; visits after it are left out. Default now.")
    private @Nullable LocalDate date;

    @Override
    public Integer call() {
        EpisodeInput.Known known = episode.read();
        Instant issued = date == null
                ? Instant.now().truncatedTo(ChronoUnit.SECONDS)
                : date.atStartOfDay().toInstant(ZoneOffset.UTC);
        String json = Fhir.write(EpisodeBundle.of(
                new Export(known.facts(), known.plan(), issued, "Slipway " + Version.NUMBER, List.of())));
        if (out == null) {
            spec.commandLine().getOut().print(json);
            spec.commandLine().getOut().flush();
        } else {
            WholeFile.write(out, json.getBytes(StandardCharsets.UTF_8));
            spec.commandLine().getErr().println("written: " + out);
        }
        return ExitStatus.OK;
    }
}
