package slipway.app.nerve;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slipway.app.console.WholeFile;
import slipway.mechanics.body.Person;
import slipway.mechanics.calibration.Calibrator;
import slipway.mechanics.calibration.EvidenceTable;
import slipway.mechanics.calibration.Prediction;
import slipway.mechanics.parameters.ParameterFile;
import slipway.mechanics.parameters.Prior;
import slipway.mechanics.pathway.PathwayModel;

/** {@code slipway calibrate}: fits the nerve model to the published rows. */
@Command(
        name = "calibrate",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Fits the parameters of the nerve model to the published measurements that ship with the program.",
            "",
            "Writes parameters.csv (values, errors, how far each was informed by the data, spread between people,"
                    + " fingerprint of the evidence, residual of each row) and agreement.svg (predicted against"
                    + " published). Rows kept for validation are never fitted; rows for later nerves are listed."
        })
public final class CalibrateCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--out", description = "Folder for the two files; default ${DEFAULT-VALUE}.", defaultValue = "out")
    private Path out = Path.of("out");

    @Override
    public Integer call() {
        EvidenceTable table = EvidenceTable.bundled();
        Calibrator.Outcome outcome = Calibrator.run(table);
        var model = new PathwayModel(Person.STANDARD, outcome.parameters().standardDraws());
        List<Prediction> predictions = Prediction.of(model, table.rows());
        WholeFile.writeAll(Map.of(
                out.resolve(ParameterFile.NAME),
                outcome.file().getBytes(StandardCharsets.UTF_8),
                out.resolve("agreement.svg"),
                ValidationPictures.agreement(predictions).getBytes(StandardCharsets.UTF_8)));
        report(outcome, predictions);
        return 0;
    }

    private void report(Calibrator.Outcome outcome, List<Prediction> predictions) {
        PrintWriter print = spec.commandLine().getOut();
        print.print(PredictionCsv.text(predictions, "not fitted", outcome.skipped()));
        print.println();
        print.printf(Locale.ROOT, "%-22s %10s %10s %8s %16s%n", "parameter", "prior", "fit", "se", "posterior/prior");
        for (Prior prior : Prior.all()) {
            double se = outcome.parameters().standardError(prior.parameter());
            print.printf(
                    Locale.ROOT,
                    "%-22s %10.4g %10.4g %8.3f %16.2f%s%n",
                    prior.parameter().key(),
                    prior.median(),
                    outcome.parameters().average().get(prior.parameter()),
                    se,
                    se / prior.sd(),
                    se / prior.sd() > 0.9 ? "  hardly informed by the data" : "");
        }
        print.printf(
                Locale.ROOT,
                "errors of the data widened by %.2f; written: %s, %s%n",
                outcome.fit().widening(),
                out.resolve(ParameterFile.NAME),
                out.resolve("agreement.svg"));
        print.flush();
    }
}
