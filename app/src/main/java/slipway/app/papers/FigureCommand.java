package slipway.app.papers;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.care.figure.ExerciseFigures;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.KeyPose;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.mechanics.motion.Motion;
import slipway.pictures.figure.Figure;
import slipway.pictures.figure.FigureScene;
import slipway.pictures.figure.MovingFigure;
import slipway.pictures.figure.View;
import slipway.pictures.look.Look;
import slipway.pictures.svg.Words;

/** {@code slipway figure}: the picture of an exercise. */
@Command(
        name = "figure",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Draws an exercise of the catalogue and prints the picture as SVG: one of its poses, or without --pose its"
                    + " end with the start as a dashed shadow and an arrow from there.",
            "",
            "Angles that a plan chooses for a person are drawn as in the catalogue."
        })
public final class FigureCommand implements Callable<Integer> {
    /** Between seven pictures straight lines are told from the real movement by nobody. */
    private static final int PICTURES = 7;

    private static final double LEAST_SECONDS = 1;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "EXERCISE", description = "Id of the exercise; 'slipway exercises' lists them.")
    private String id = "";

    @Option(names = "--pose", paramLabel = "POSE", description = "start, far, or another pose of this exercise.")
    private @Nullable String pose;

    @Option(names = "--side", description = "left or right: the side of the nerve; default right.")
    private Side side = Side.RIGHT;

    @Option(names = "--view", description = "side, front, top or raised; default the one that shows most.")
    private @Nullable View view;

    @Option(
            names = "--look",
            description = "paper, print (grey) or dark; default ${DEFAULT-VALUE}.",
            defaultValue = "paper")
    private Ground look = Ground.paper;

    @Option(
            names = "--format",
            description = "svg, or animated: an SVG that goes there and back; default ${DEFAULT-VALUE}.",
            defaultValue = "svg")
    private Format format = Format.svg;

    enum Ground {
        paper,
        print,
        dark
    }

    enum Format {
        svg,
        animated
    }

    @Override
    public Integer call() {
        Exercise exercise = Named.exercise(id);
        FigureScene scene = scene(exercise);
        Look colours = switch (look) {
            case paper -> Look.paper();
            case print -> Look.print();
            case dark -> Look.dark();
        };
        var words = new Words(exercise.id(), exercise.name().en(), Named.shows(exercise, pose));
        PrintWriter out = spec.commandLine().getOut();
        Figure figure = Figure.of(view == null ? scene : scene.withView(view));
        out.println(
                switch (format) {
                    case svg -> figure.svg(colours, words);
                    case animated -> animated(exercise, colours, words);
                });
        out.flush();
        return ExitStatus.OK;
    }

    /** From the first pose to the next, at the pace of the exercise. */
    private String animated(Exercise exercise, Look colours, Words words) {
        List<KeyPose> poses = exercise.movement().poses();
        KeyPose far = poses.get(Math.min(1, poses.size() - 1));
        Posture start = poses.get(0).posture(Map.of());
        double seconds = Math.max(LEAST_SECONDS, far.reachSeconds());
        var motion = new Motion(List.of(new Motion.Key(start, 0), new Motion.Key(far.posture(Map.of()), seconds)));
        FigureScene still = ExerciseFigures.still(exercise, start, side);
        List<Figure> steps = Figure.along(view == null ? still : still.withView(view), motion, PICTURES);
        var frame = Figure.commonBounds(steps);
        return MovingFigure.of(steps.stream()
                        .map(step -> step.svg(colours, words, frame))
                        .toList())
                .animated(seconds);
    }

    private FigureScene scene(Exercise exercise) {
        List<KeyPose> poses = exercise.movement().poses();
        if (pose == null) {
            var start = poses.get(0).posture(Map.of());
            return poses.size() == 1
                    ? ExerciseFigures.still(exercise, start, side)
                    : ExerciseFigures.movement(exercise, start, poses.get(1).posture(Map.of()), side);
        }
        KeyPose found = poses.stream()
                .filter(each -> each.id().equals(pose))
                .findFirst()
                .orElseThrow(() -> new BadInputException("--pose must be one of %s for %s, was \"%s\""
                        .formatted(
                                String.join(
                                        ", ", poses.stream().map(KeyPose::id).toList()),
                                id,
                                pose)));
        return ExerciseFigures.pose(exercise, found, side);
    }
}
