package slipway.app.locate;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.ExitStatus;
import slipway.care.casefile.CaseFile;
import slipway.reasoning.screening.Level;
import slipway.reasoning.screening.Screening;
import slipway.reasoning.screening.ScreeningResult;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;

/** {@code slipway screen}: is it safe to treat here? */
@Command(
        name = "screen",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Checks a person for danger before anything else.",
            "",
            "FILE is the case file of one person, or a list of published cases. The level is emergency, urgent,"
                    + " incomplete, caution or clear; what matched, what was not asked, and by when to act are named.",
            "",
            "For one person the exit status is 3 when care has to wait: emergency, urgent or incomplete."
        })
public final class ScreenCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "Case file or list of cases (YAML).")
    private Path file = Path.of("");

    @Option(names = "--format", description = "text or json; default ${DEFAULT-VALUE}.", defaultValue = "text")
    private Format format = Format.TEXT;

    enum Format {
        TEXT,
        JSON
    }

    @Override
    public Integer call() {
        CaseInput input = CaseInput.read(file);
        Screening screening = Screening.load();
        if (input.isList()) {
            list(input, screening);
            return ExitStatus.OK;
        }
        CaseFile person = input.person();
        ScreeningResult result = screening.evaluate(person.screeningInput());
        PrintWriter out = spec.commandLine().getOut();
        if (format == Format.JSON) {
            out.println(JsonMapper.shared().writeValueAsString(ScreeningView.json(person.id(), result)));
        } else {
            ScreeningView.text(result).forEach(out::println);
        }
        out.flush();
        return result.level().blocksPlan() ? ExitStatus.NO_PLAN : ExitStatus.OK;
    }

    private void list(CaseInput input, Screening screening) {
        PrintWriter out = spec.commandLine().getOut();
        ArrayNode array = JsonMapper.shared().createArrayNode();
        input.checkedCount();
        input.forEach(each -> {
            ScreenedCase screened = ScreenedCase.of(each, screening);
            if (format == Format.JSON) {
                array.add(ScreeningView.json(each.id(), screened.result()));
            } else {
                Level level = screened.result().level();
                out.printf("%-10s %-10s %s%n", each.id(), level.key(), ScreeningView.shortly(screened));
            }
        });
        if (format == Format.JSON) {
            out.println(JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(array));
        }
        out.flush();
    }
}
