package slipway.app.papers;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.DateOption;
import slipway.app.console.ExitStatus;
import slipway.app.console.WholeFile;
import slipway.documents.paper.PaperFrame;
import slipway.documents.paper.PaperInput;
import slipway.documents.paper.PaperJson;
import slipway.documents.paper.PaperKind;
import slipway.documents.paper.PaperPrinter;
import slipway.documents.paper.PaperText;
import slipway.documents.paper.PaperWriter;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.reasoning.billing.UnitRule;

/** {@code slipway paper}: notes and letters of an episode. */
@Command(
        name = "paper",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes a note or letter of an episode, put together from what was recorded: as tagged PDF, as text, and as"
                    + " JSON in which each sentence names its source. Nothing is invented; what was not recorded is said"
                    + " to be not recorded. It is a draft: the therapist edits and signs.",
            "",
            "Kinds: evaluation, plan-of-care, visit-note (the last visit up to the date), progress-report, referral,"
                    + " letter (to the referrer), discharge, relapse-plan (for the person)."
        })
public final class PaperCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private EpisodeInput episode = new EpisodeInput();

    @Option(names = "--kind", required = true, paramLabel = "KIND", description = "Which paper.")
    private String kind = "";

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "Folder; made if it is not there.")
    private Path out = Path.of("");

    @Option(
            names = "--date",
            converter = DateOption.class,
            paramLabel = "YYYY-MM-DD",
            description = "Date of the paper; nothing later goes in. Default today.")
    private @Nullable LocalDate date;

    @Option(
            names = "--units",
            paramLabel = "RULE",
            description = "Count units in a visit note: eight-minute or midpoint. Default: minutes only.")
    private @Nullable String units;

    @Option(names = "--paper", description = "a4 or letter; default ${DEFAULT-VALUE}.", defaultValue = "a4")
    private Paper paper = Paper.A4;

    @Override
    public Integer call() {
        PaperKind wanted = PaperKind.find(kind)
                .orElseThrow(() -> new BadInputException("--kind must be one of %s, was %s"
                        .formatted(
                                Arrays.stream(PaperKind.values())
                                        .map(PaperKind::key)
                                        .collect(Collectors.joining(", ")),
                                kind)));
        LocalDate day = date == null ? LocalDate.now(ZoneId.systemDefault()) : date;
        EpisodeInput.Known known = episode.read();
        PaperInput input = PaperInput.of(known.facts(), known.plan(), day, rule());
        PaperText text;
        try {
            text = PaperWriter.write(wanted, input);
        } catch (IllegalArgumentException e) {
            throw new BadInputException("no %s can be written: %s".formatted(kind, e.getMessage()));
        }
        write(wanted, text, PaperFrame.of(wanted, input));
        return ExitStatus.OK;
    }

    private Optional<UnitRule> rule() {
        if (units == null) {
            return Optional.empty();
        }
        return Optional.of(UnitRule.find(units)
                .orElseThrow(() -> new BadInputException("--units must be eight-minute or midpoint, was " + units)));
    }

    private void write(PaperKind wanted, PaperText text, PaperFrame frame) {
        var printer = new PaperPrinter(new PdfEngine());
        Map<Path, byte[]> files = new LinkedHashMap<>();
        files.put(
                out.resolve(wanted.key() + ".pdf"),
                printer.print(text, frame, paper).pdf());
        files.put(out.resolve(wanted.key() + ".txt"), bytes(printer.text(text, frame)));
        files.put(out.resolve(wanted.key() + ".json"), bytes(PaperJson.write(text)));
        WholeFile.writeAll(files);
        PrintWriter err = spec.commandLine().getErr();
        files.keySet().forEach(file -> err.println("written: " + file));
        List<String> blanks = text.blanks().stream().map(each -> each.text()).toList();
        if (!blanks.isEmpty()) {
            err.println("not recorded: " + blanks.size() + " (marked in the paper)");
        }
        if (!PaperWriter.reviewed(text.language())) {
            err.println("The Spanish texts have not yet been reviewed by a speaker; read them with the person.");
        }
        err.flush();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
