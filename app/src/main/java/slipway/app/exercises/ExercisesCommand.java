package slipway.app.exercises;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.care.loads.GlideLoads;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.exercises.format.ExerciseReader;
import slipway.exercises.yaml.MistakesException;
import slipway.exercises.yaml.YamlDocument;
import slipway.mechanics.nerve.Site;

/** {@code slipway exercises}: the catalogue, one exercise, or a check of a therapist's own file. */
@Command(
        name = "exercises",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Lists the catalogue, shows one exercise, or checks a file of your own.",
            "",
            "A check tells every mistake with line and column and exits with 2 if there is one."
        })
public final class ExercisesCommand implements Callable<Integer> {
    private static final int BAD_INPUT = 2;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "ID", arity = "0..1", description = "Show this exercise instead of the list.")
    private @Nullable String id;

    @Option(
            names = "--language",
            paramLabel = "en|es",
            description =
                    "Language of the patient's words; default ${DEFAULT-VALUE}. Spanish is not yet reviewed by a speaker.",
            defaultValue = "en")
    private String languageCode = "en";

    @Option(names = "--format", description = "text or json; default ${DEFAULT-VALUE}.", defaultValue = "text")
    private Format format = Format.text;

    @Option(
            names = "--check",
            paramLabel = "FILE.yaml",
            description = "Check this exercise file; show it if it is good.")
    private @Nullable Path check;

    @Option(
            names = "--loads",
            paramLabel = "PLACE",
            description =
                    "Show what the glides do at this place of a standard body (170 cm): glide, rise of load, mm of glide for"
                            + " each percent of load, and what that is called. With ID only that one.")
    private @Nullable String place;

    enum Format {
        text,
        json
    }

    @Override
    public Integer call() {
        Language language = Language.find(languageCode)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(), "--language must be en or es, was \"" + languageCode + "\""));
        if (id != null && check != null) {
            throw new ParameterException(spec.commandLine(), "give either ID or --check, not both");
        }
        PrintWriter out = spec.commandLine().getOut();
        try {
            if (place != null) {
                out.print(loads(place));
            } else if (check != null) {
                out.println(show(checked(check), language));
            } else if (id != null) {
                out.println(show(Catalogue.bundled().get(id), language));
            } else {
                var all = Catalogue.bundled().list();
                out.println(
                        format == Format.json ? ExerciseJson.list(all, language) : ExerciseText.list(all, language));
            }
            out.flush();
            return 0;
        } catch (MistakesException | IllegalArgumentException e) {
            spec.commandLine().getErr().println(e.getMessage());
            return BAD_INPUT;
        } catch (IOException e) {
            spec.commandLine().getErr().println("cannot read " + check + ": " + e.getMessage());
            return BAD_INPUT;
        }
    }

    private String loads(String name) {
        if (format == Format.json || check != null) {
            throw new ParameterException(spec.commandLine(), "--loads goes with neither --check nor --format json");
        }
        Optional<String> only = Optional.ofNullable(id);
        only.ifPresent(Catalogue.bundled()::get);
        return LoadsText.of(GlideLoads.at(place(name)), only);
    }

    private static Site place(String name) {
        return Site.anywhere(name)
                .orElseThrow(() -> new IllegalArgumentException(
                        "unknown site \"%s\" (known: %s)".formatted(name, String.join(", ", Site.namesAnywhere()))));
    }

    private static Exercise checked(Path file) throws IOException {
        try (var stream = Files.newInputStream(file)) {
            // One byte more than is allowed, so that the reader sees that the file is too large without reading it all.
            byte[] bytes = stream.readNBytes(YamlDocument.MAX_BYTES + 1);
            Path name = file.getFileName();
            return ExerciseReader.read(
                    name == null ? "file" : name.toString(),
                    bytes,
                    Catalogue.bundled().ids());
        }
    }

    private String show(Exercise exercise, Language language) {
        return format == Format.json ? ExerciseJson.one(exercise, language) : ExerciseText.one(exercise, language);
    }
}
