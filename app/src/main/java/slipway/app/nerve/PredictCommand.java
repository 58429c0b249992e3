package slipway.app.nerve;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.mechanics.body.Person;
import slipway.mechanics.calibration.EvidenceException;
import slipway.mechanics.calibration.EvidenceTable;
import slipway.mechanics.calibration.Prediction;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;

/** {@code slipway predict}: what the nerve model says about a table of measurements. */
@Command(
        name = "predict",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Predicts a table of nerve measurements with all draws of the model.",
            "",
            "FILE has the columns of the published measurements that ship with the program: id, tract, site, from, to,"
                    + " quantity (excursion, strain, end-strain, bed-elongation or order), relation, mean, sd. Rows"
                    + " with another quantity, and rows marked geometry, context or later, are listed and skipped.",
            "",
            "The model was never fitted to the rows of FILE; the interval holds the uncertainty of the average person,"
                    + " the spread between people and the place of the measurement."
        })
public final class PredictCommand implements Callable<Integer> {
    private static final int BAD_INPUT = 2;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "CSV table of measurements.")
    private Path file = Path.of("");

    @Option(names = "--format", description = "csv or text; default ${DEFAULT-VALUE}.", defaultValue = "csv")
    private Format format = Format.csv;

    enum Format {
        csv,
        text
    }

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        EvidenceTable table;
        try {
            table = EvidenceTable.parse(Files.readString(file), file.toString());
        } catch (CharacterCodingException e) {
            err.println(file + ": the file is not UTF-8 text");
            return BAD_INPUT;
        } catch (IOException e) {
            err.println(file + ": cannot be read");
            return BAD_INPUT;
        } catch (EvidenceException e) {
            e.mistakes().forEach(mistake -> err.println(file + ": " + mistake));
            return BAD_INPUT;
        } catch (UncheckedIOException | IllegalArgumentException e) {
            err.println(file + ": is not a CSV table with a header row, or a quote in it is not closed");
            return BAD_INPUT;
        }
        print(table);
        return 0;
    }

    private void print(EvidenceTable table) {
        var model = new PathwayModel(Person.STANDARD, FittedParameters.bundled().standardDraws());
        List<Prediction> predictions = Prediction.of(model, table.rows());
        PrintWriter out = spec.commandLine().getOut();
        if (format == Format.text) {
            out.print(PredictionCsv.text(predictions, "not predicted", table.skipped()));
        } else {
            out.print(PredictionCsv.csv(predictions));
            PrintWriter err = spec.commandLine().getErr();
            table.skipped().forEach(row -> err.println("not predicted: " + row.id() + " (" + row.reason() + ")"));
        }
        out.flush();
    }
}
