package slipway.app.nerve;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.care.bench.BenchBody;
import slipway.care.bench.MotionReading;
import slipway.care.bench.MotionReading.Moment;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.motion.Motion;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.parameters.FittedParameters;
import slipway.pictures.look.Palette;
import slipway.pictures.motion.LoadOverTime;

/** {@code slipway motion}: load over time of an exercise or of a movement between postures. */
@Command(
        name = "motion",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Shows how load and glide at one site go up and down during a motion.",
            "",
            "MOTION is the id of an exercise (as in pictures, without a person's limits) or postures in quotes with"
                    + " -> between them: \"hip 60 knee 80 -> hip 60 knee 10\". Values are changes from its first"
                    + " posture; median and 90 %% interval over all draws.",
            "",
            "csv has one line per moment; svg is the picture of load over time."
        })
public final class MotionCommand implements Callable<Integer> {
    private static final double SECONDS_PER_PART = 3;
    private static final int WIDTH = 720;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "MOTION", description = "Exercise or postures.")
    private String motion = "";

    @Option(names = "--site", description = "Where; default \"${DEFAULT-VALUE}\".", defaultValue = "deep gluteal space")
    private String site = "deep gluteal space";

    @Option(names = "--format", description = "csv or svg; default ${DEFAULT-VALUE}.", defaultValue = "csv")
    private Format format = Format.csv;

    enum Format {
        csv,
        svg
    }

    @Override
    public Integer call() {
        var mistakes = new ArrayList<String>();
        Motion played = motion(mistakes);
        Optional<Site> place = Site.anywhere(site);
        if (place.isEmpty()) {
            mistakes.add("unknown site \"%s\" (known: %s)".formatted(site, String.join(", ", Site.namesAnywhere())));
        }
        if (!mistakes.isEmpty()) {
            throw new BadInputException("slipway: " + String.join("\nslipway: ", mistakes));
        }
        var body = BenchBody.of(Person.STANDARD, FittedParameters.bundled().standardDraws());
        MotionReading reading = MotionReading.of(played, played.keys().get(0).posture(), place.orElseThrow(), body);
        PrintWriter out = spec.commandLine().getOut();
        out.print(format == Format.csv ? csv(reading) : svg(reading));
        out.flush();
        return ExitStatus.OK;
    }

    private Motion motion(List<String> mistakes) {
        Optional<Exercise> exercise = Catalogue.bundled().find(motion.strip());
        if (exercise.isPresent()) {
            return exercise.get().motion();
        }
        String[] parts = motion.split("->", -1);
        if (parts.length < 2) {
            mistakes.add(
                    "\"%s\" is neither an exercise ('slipway exercises' lists them) nor postures with -> between them"
                            .formatted(motion));
            return Motion.still(Posture.reference());
        }
        var keys = new ArrayList<Motion.Key>();
        for (int i = 0; i < parts.length; i++) {
            keys.add(new Motion.Key(PostureCommand.posture(parts[i], mistakes), SECONDS_PER_PART * i));
        }
        return new Motion(keys);
    }

    private static String csv(MotionReading reading) {
        var out = new StringBuilder(
                "seconds,posture,glideMm,glideLowMm,glideHighMm,strainPct,loadPct,loadLowPct,loadHighPct\n");
        for (Moment moment : reading.moments()) {
            out.append(String.format(
                    Locale.ROOT,
                    "%.3f,%s,%.3f,%.3f,%.3f,%.3f,%.3f,%.3f,%.3f%n",
                    moment.seconds(),
                    moment.posture().text(),
                    moment.glideMm().median(),
                    moment.glideMm().low(),
                    moment.glideMm().high(),
                    moment.strainPct().median(),
                    moment.loadPct().median(),
                    moment.loadPct().low(),
                    moment.loadPct().high()));
        }
        return out.toString();
    }

    private String svg(MotionReading reading) {
        List<LoadOverTime.Point> points = reading.moments().stream()
                .map(m -> new LoadOverTime.Point(
                        m.seconds(),
                        m.loadPct().median(),
                        m.loadPct().low(),
                        m.loadPct().high()))
                .toList();
        return LoadOverTime.svg(motion.strip() + ", " + reading.site().name(), points, Palette.PAPER, WIDTH);
    }
}
