package slipway.app.nerve;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.care.bench.BenchBody;
import slipway.care.bench.PostureReading;
import slipway.care.bench.PostureStrip;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.FittedParameters;

/** {@code slipway posture}: what a posture does to the nerve. */
@Command(
        name = "posture",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Shows strain, glide, relative tension and load at every named site in a posture.",
            "",
            "A posture is pairs of joint and angle in degrees, other joints at 0, other- for the other leg:"
                    + " \"hip 60 knee 0 ankle 10 other-hip 30\"; or the name of a position (lying, slump, sitting ...),"
                    + " which may be followed by joints that differ: \"slump knee 30\".",
            "",
            "Values are changes from the posture of --from; median and 90 %% interval over all draws of the model."
        })
public final class PostureCommand implements Callable<Integer> {
    private static final double CM_PER_M = 100;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "POSTURE", description = "Posture or position, in quotes.")
    private String posture = "";

    @Option(names = "--tract", description = "Pathway; default ${DEFAULT-VALUE}.", defaultValue = "sciatic-tibial")
    private String tract = "sciatic-tibial";

    @Option(
            names = "--from",
            description = "Posture or position to compare with; default \"${DEFAULT-VALUE}\".",
            defaultValue = "lying")
    private String from = "lying";

    @Option(
            names = "--beside",
            paramLabel = "POSTURE",
            description = "A second posture, shown in a column beside the first; text or json.")
    private @Nullable String beside;

    @Option(
            names = "--stature-cm",
            paramLabel = "CM",
            description = "Standing height; default ${DEFAULT-VALUE}.",
            defaultValue = "170")
    private double statureCm = 170;

    @Option(names = "--format", description = "text, json or svg; default ${DEFAULT-VALUE}.", defaultValue = "text")
    private Format format = Format.text;

    enum Format {
        text,
        json,
        svg
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        String second = beside;
        if (second != null) {
            PostureReading one = read(posture);
            PostureReading other = read(second);
            out.print(format == Format.json ? PostureText.json(one, other) : PosturesBeside.text(one, other));
            out.flush();
            return ExitStatus.OK;
        }
        PostureReading reading = read(posture);
        out.print(
                switch (format) {
                    case text -> PostureText.text(reading);
                    case json -> PostureText.json(reading);
                    case svg -> PostureStrip.svg(reading, body(new Person(statureCm / CM_PER_M)));
                });
        out.flush();
        return ExitStatus.OK;
    }

    private PostureReading read(String asked) {
        var mistakes = new ArrayList<String>();
        Posture end = posture(asked, mistakes);
        if (beside != null && format == Format.svg) {
            mistakes.add("--beside is shown as text or json, not as " + format);
        }
        Posture start = posture(from, mistakes);
        Tract pathway = Tract.find(tract).orElse(Tract.SCIATIC_TIBIAL);
        if (Tract.find(tract).isEmpty()) {
            mistakes.add("unknown tract \"%s\" (known: %s)"
                    .formatted(
                            tract, Arrays.stream(Tract.values()).map(Tract::key).collect(Collectors.joining(", "))));
        }
        Person person = Person.STANDARD;
        try {
            person = new Person(statureCm / CM_PER_M);
        } catch (IllegalArgumentException e) {
            mistakes.add("--stature-cm must be within 100 and 230, was " + statureCm);
        }
        if (!mistakes.isEmpty()) {
            throw new BadInputException("slipway: " + String.join("\nslipway: ", mistakes));
        }
        return PostureReading.of(end, start, pathway, body(person));
    }

    private static BenchBody body(Person person) {
        return BenchBody.of(person, FittedParameters.bundled().standardDraws());
    }

    /** A position by its longest matching name with joints that differ, or joints alone. */
    static Posture posture(String text, List<String> mistakes) {
        String words = text.strip().toLowerCase(Locale.ROOT);
        String name = Position.all().keySet().stream()
                .filter(position -> words.equals(position) || words.startsWith(position + " "))
                .reduce("", (one, other) -> one.length() >= other.length() ? one : other);
        Posture base = Position.find(name).map(Position::posture).orElse(Posture.reference());
        try {
            return base.withParsed(words.substring(name.length()));
        } catch (IllegalArgumentException e) {
            mistakes.add(e.getMessage() + "; or a position: "
                    + String.join(", ", Position.all().keySet()));
            return base;
        }
    }
}
