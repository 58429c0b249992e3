package slipway.app.nerve;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slipway.app.console.WholeFile;
import slipway.mechanics.calibration.EvidenceTable;
import slipway.mechanics.calibration.ModelForm;
import slipway.mechanics.calibration.study.ValidationStudy;

/** {@code slipway validate}: how far the nerve model can be believed. */
@Command(
        name = "validate",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Computes how far the nerve model can be believed and writes it down, the misses first.",
            "",
            "Every study is left out in turn and predicted from the others; rows that were never fitted are predicted;"
                    + " the spread between people is compared with the published one; forms of the model are compared;"
                    + " two facts of practice test the load measure; assumed angles, priors and the mesh are varied.",
            "",
            "Replaces the generated part of validation.md (between two marks; the text around it stays) and writes the"
                    + " plots to images/. Takes a few minutes: one fit of the model for every study and form."
        })
public final class ValidateCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--out", description = "Folder of validation.md; default ${DEFAULT-VALUE}.", defaultValue = "docs")
    private Path out = Path.of("docs");

    @Option(names = "--quick", description = "Do not compare forms of the model: under a minute.")
    private boolean quick;

    @Override
    public Integer call() {
        Path page = out.resolve(ValidationPage.NAME);
        // Read first, so that a page that cannot be used is told before minutes of work.
        ValidationPage.with(page, "");
        List<ModelForm> forms = quick ? ModelForm.compared().subList(0, 1) : ModelForm.compared();
        ValidationStudy study = ValidationStudy.run(EvidenceTable.bundled(), forms);
        Map<Path, byte[]> files = new LinkedHashMap<>();
        files.put(page, bytes(ValidationPage.with(page, ValidationReport.markdown(study))));
        ValidationPictures.of(study)
                .forEach((name, svg) -> files.put(out.resolve("images").resolve(name), bytes(svg)));
        WholeFile.writeAll(files);
        report(study, files);
        return 0;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private void report(ValidationStudy study, Map<Path, byte[]> files) {
        PrintWriter print = spec.commandLine().getOut();
        List<String> misses = new Aims(study).misses();
        print.printf(
                Locale.ROOT,
                "left-out studies: mean |z| %.2f, largest %.2f%nmisses: %d%n",
                study.chosen().meanAbsoluteZ(),
                study.chosen().largestAbsoluteZ(),
                misses.size());
        misses.forEach(miss -> print.println("  " + miss.replace("**", "")));
        files.keySet().forEach(file -> print.println("written: " + file));
        print.flush();
    }
}
