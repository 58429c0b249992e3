package slipway.care.figures;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Instructions.CommonError;
import slipway.exercises.exercise.KeyPose;
import slipway.exercises.exercise.Setting;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.pictures.figure.Figure;
import slipway.pictures.figure.FigureScene;
import slipway.pictures.figure.Pose;
import slipway.pictures.figure.PropUse;
import slipway.pictures.figure.View;
import slipway.pictures.look.Look;
import slipway.pictures.svg.Words;

/**
 * Writes pages with every pose and every common error of the catalogue as pictures, to be looked at:
 * {@code ExerciseContactSheet DIRECTORY [PER_PAGE]}. Not a test; a wrong posture is seen, not computed.
 */
public final class ExerciseContactSheet {
    private ExerciseContactSheet() {}

    /** Writes the pages. */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        int perPage = args.length > 1 ? Integer.parseInt(args[1]) : 12;
        List<Exercise> exercises = Catalogue.bundled().list();
        Files.createDirectories(folder);
        for (int from = 0; from < exercises.size(); from += perPage) {
            var page = new StringBuilder("<!doctype html><meta charset=\"utf-8\"><style>"
                    + "body{font:13px sans-serif;background:#faf8f3;margin:8px}"
                    + "section{display:flex;gap:6px;border-bottom:1px solid #ccc;align-items:flex-end}"
                    + "figure{margin:4px;width:190px}svg{width:190px;height:150px}h2{font-size:13px;width:130px}"
                    + "figcaption{font-size:11px}</style>");
            exercises
                    .subList(from, Math.min(exercises.size(), from + perPage))
                    .forEach(exercise -> page.append(row(exercise)));
            Files.writeString(folder.resolve("page-%02d.html".formatted(from / perPage + 1)), page);
        }
    }

    private static String row(Exercise exercise) {
        var row = new StringBuilder("<section><h2>" + exercise.id() + "</h2>");
        KeyPose first = exercise.movement().poses().get(0);
        Pose start = pose(exercise, first, first.posture(Map.of()));
        for (KeyPose key : exercise.movement().poses()) {
            Pose pose = pose(exercise, key, key.posture(Map.of()));
            row.append(picture(
                    exercise, pose, key.id().equals(first.id()) ? Optional.empty() : Optional.of(start), key.id()));
        }
        for (CommonError error : exercise.instructions().errors()) {
            Pose wrong = pose(exercise, exercise.movement().pose(error.pose()), error.wrong());
            row.append(picture(
                    exercise, wrong, Optional.empty(), "WRONG: " + error.text().en()));
        }
        return row.append("</section>\n").toString();
    }

    private static Pose pose(Exercise exercise, KeyPose key, Posture posture) {
        return new Pose(exercise.setting().support(), posture, key.arms());
    }

    private static String picture(Exercise exercise, Pose pose, Optional<Pose> start, String caption) {
        var scene = new FigureScene(Side.RIGHT, pose, props(exercise), view(exercise), start, Optional.empty());
        String svg;
        try {
            svg = Figure.of(scene).svg(Look.paper(), new Words("x", exercise.id(), caption));
        } catch (IllegalArgumentException e) {
            svg = "<b>" + e.getMessage() + "</b>";
        }
        return "<figure>" + svg + "<figcaption>" + caption + "</figcaption></figure>";
    }

    /** What moves sideways is seen from the front. */
    private static View view(Exercise exercise) {
        boolean sideways = exercise.movement().rangesDeg(Map.of()).keySet().stream()
                .anyMatch(joint -> joint.joint() == Joint.SPINE_SIDE);
        return sideways ? View.FRONT : View.usual(exercise.setting().support());
    }

    private static Set<PropUse> props(Exercise exercise) {
        Set<PropUse> uses = EnumSet.noneOf(PropUse.class);
        for (Setting.PropUse use : exercise.setting().props()) {
            drawn(use).ifPresent(uses::add);
        }
        return uses;
    }

    private static Optional<PropUse> drawn(Setting.PropUse use) {
        return switch (use.prop()) {
            case STRAP -> Optional.of(PropUse.STRAP);
            case CHAIR -> Optional.of(PropUse.CHAIR);
            case WALL -> Optional.of(PropUse.WALL);
            case TOWEL -> Optional.of(PropUse.TOWEL_UNDER_HEEL);
            case TABLE -> Optional.of(PropUse.TABLE);
            case STEP -> Optional.of(PropUse.STEP);
            case PILLOW ->
                switch (use.place()) {
                    case UNDER_HEAD -> Optional.of(PropUse.PILLOW_UNDER_HEAD);
                    case UNDER_KNEE, UNDER_KNEES -> Optional.of(PropUse.PILLOW_UNDER_KNEES);
                    case BETWEEN_KNEES -> Optional.of(PropUse.PILLOW_BETWEEN_KNEES);
                    case UNDER_ANKLES -> Optional.of(PropUse.PILLOW_UNDER_ANKLES);
                    default -> Optional.empty();
                };
        };
    }
}
