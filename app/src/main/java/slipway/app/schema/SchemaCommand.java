package slipway.app.schema;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;

/** {@code slipway schema}: prints the JSON schema of a file format. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Prints the JSON schema (draft 2020-12) of a file that the program reads or writes.",
            "",
            "Without NAME the schemas are listed. An editor that knows JSON schemas checks and completes a case file"
                    + " while it is written:",
            "",
            "  slipway schema case > case.schema.json",
            "  first line of the case file:  # yaml-language-server: $schema=case.schema.json"
        })
public final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "NAME",
            arity = "0..1",
            description = "case, episode, plan or exercise.",
            defaultValue = "")
    private String name = "";

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (name.isEmpty()) {
            for (FileFormat format : FileFormat.values()) {
                out.printf("%-10s %s%n", format.key(), format.description());
            }
        } else {
            out.print(FileFormat.find(name).orElseThrow(this::unknown).schema());
        }
        out.flush();
        return ExitStatus.OK;
    }

    private BadInputException unknown() {
        String known = Arrays.stream(FileFormat.values()).map(FileFormat::key).collect(Collectors.joining(", "));
        return new BadInputException("slipway: there is no schema \"%s\" (known: %s)".formatted(name, known));
    }
}
