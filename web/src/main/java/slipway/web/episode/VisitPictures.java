package slipway.web.episode;

import java.util.Optional;
import slipway.care.figure.ExerciseFigures;
import slipway.care.figure.LoadRulers;
import slipway.care.visit.VisitPlan;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Posture;
import slipway.pictures.figure.Figure;
import slipway.pictures.look.Look;
import slipway.pictures.look.Palette;
import slipway.pictures.ruler.LoadRuler;
import slipway.pictures.svg.Words;
import slipway.reasoning.dose.DosedExercise;

/** Pictures of a visit for a page, once for light and once for dark screens. */
public final class VisitPictures {

    private VisitPictures() {}

    /**
     * A picture in both lights.
     *
     * @param light SVG for a light page
     * @param dark SVG for a dark page
     */
    public record Both(String light, String dark) {}

    /** An exercise with this person's range: where it ends, its start as a ghost. */
    public static Both exercise(VisitPlan visit, DosedExercise dosed) {
        Exercise exercise = visit.exercise(dosed.range().candidate().id());
        Posture start = dosed.range().candidate().start();
        Figure figure = Figure.of(ExerciseFigures.movement(
                exercise, start, dosed.range().end(), visit.file().episode().side()));
        String name = exercise.name().in(Language.EN);
        String shows = exercise.instructions().steps().get(0).text().in(Language.EN);
        return new Both(
                figure.svg(Look.paper(), new Words(exercise.id(), name, shows)),
                figure.svg(Look.dark(), new Words(exercise.id() + "-dark", name, shows)));
    }

    /**
     * The load ruler; empty when the plan is stopped or no modelled place is suspected.
     *
     * @param width in px, as wide as the column it stands in, so that its letters keep their size
     */
    public static Optional<Both> ruler(VisitPlan visit, int width) {
        return LoadRulers.of(visit)
                .map(scale -> new Both(
                        LoadRuler.svg(scale, Palette.PAPER, width, "ruler"),
                        LoadRuler.svg(scale, Palette.DARK, width, "ruler-dark")));
    }
}
