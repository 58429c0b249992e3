package slipway.app.papers;

import java.net.URI;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.documents.sheet.HomeSheet;
import slipway.documents.sheet.HomeSheetPrinter;
import slipway.documents.sheet.SheetFormat;
import slipway.documents.visit.SheetOfVisit;

/** {@code slipway sheet}: the sheet for home. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes the sheet for home as a tagged PDF: what to change in the day, the exercises with pictures, doses"
                    + " and stop rules, the emergency box, and a diary for two weeks.",
            "",
            "Try each exercise in the room first. If the screening stops the plan, or no exercise can be given, nothing"
                    + " is written and the exit status is 3."
        })
public final class SheetCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private TakeHome home = new TakeHome();

    @Option(names = "--paper", description = "a4 or letter; default ${DEFAULT-VALUE}.", defaultValue = "a4")
    private Paper paper = Paper.A4;

    @Option(
            names = "--type",
            description = "Size of type: normal (12 points) or large (16 points); default ${DEFAULT-VALUE}.",
            defaultValue = "normal")
    private SheetFormat.Type type = SheetFormat.Type.NORMAL;

    @Option(
            names = "--guide-address",
            paramLabel = "URL",
            description = "Where the person finds the moving guide; printed as a code to photograph.")
    private @Nullable URI guideAddress;

    @Override
    public Integer call() {
        return home.write(spec.commandLine().getErr(), (visit, language, day) -> {
            var sheet = type == SheetFormat.Type.LARGE
                    ? SheetOfVisit.brief(visit, language, day, TakeHome.FIRST_VERSION)
                    : SheetOfVisit.of(visit, language, day, TakeHome.FIRST_VERSION);
            byte[] pdf = new HomeSheetPrinter(new PdfEngine())
                    .print(withCode(sheet), new SheetFormat(paper, type))
                    .pdf();
            String large = type == SheetFormat.Type.LARGE ? "-large" : "";
            return new TakeHome.Made(
                    "sheet-%s-%s%s.pdf".formatted(language.code(), paper.name().toLowerCase(Locale.ROOT), large), pdf);
        });
    }

    private HomeSheet withCode(HomeSheet sheet) {
        URI address = guideAddress;
        if (address == null) {
            return sheet;
        }
        // A phone opens nothing else from a code without asking.
        if (!"https".equals(address.getScheme()) || address.getHost() == null) {
            throw new BadInputException("--guide-address must be a whole https address, was \"" + address + "\"");
        }
        return sheet.leadingTo(address.toASCIIString());
    }
}
