package slipway.documents.guide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.care.figure.ExerciseFigures;
import slipway.care.visit.Companion;
import slipway.care.visit.VisitPlan;
import slipway.documents.sheet.HomeSheet;
import slipway.documents.sheet.SheetExercise;
import slipway.documents.visit.SheetOfVisit;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Instructions;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.mechanics.motion.Motion;
import slipway.pictures.figure.Figure;
import slipway.pictures.figure.MovingFigure;
import slipway.pictures.look.Look;
import slipway.pictures.space.Bounds;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.dose.DosedExercise;
import slipway.reasoning.dose.ExerciseCandidate;

/** The moving guide of a visit. */
public final class GuideOfVisit {
    /** Pictures from start to end: between five, a curve through them is told from the real movement by nobody. */
    private static final int PICTURES = 5;

    private static final Coefficients DATA = Coefficients.load("sheet.csv");

    private final VisitPlan visit;
    private final Language language;
    private final Words words;

    private GuideOfVisit(VisitPlan visit, Language language) {
        this.visit = visit;
        this.language = language;
        this.words = Words.beside(GuideOfVisit.class, language);
    }

    /**
     * The guide as one HTML page.
     *
     * @param given day on which it is given
     * @param version of the sheet that it goes with
     * @throws IllegalArgumentException if the plan was stopped or gives no exercise: then there is no guide
     */
    public static String html(VisitPlan visit, Language language, LocalDate given, String version) {
        HomeSheet sheet = SheetOfVisit.of(visit, language, given, version);
        return new GuidePage(sheet, new GuideOfVisit(visit, language).exercises(sheet)).html();
    }

    private List<GuideExercise> exercises(HomeSheet sheet) {
        var ways = new ArrayList<Way>();
        // In the order of the sheet: the glides, then what goes with them.
        for (DosedExercise dosed : visit.given()) {
            ExerciseCandidate candidate = dosed.range().candidate();
            ways.add(new Way(
                    visit.exercise(candidate.id()),
                    candidate.start(),
                    dosed.range().end()));
        }
        for (Companion companion : visit.companions()) {
            var poses = companion.exercise().movement().poses();
            ways.add(new Way(
                    companion.exercise(),
                    poses.get(0).posture(Map.of()),
                    poses.get(poses.size() > 1 ? 1 : 0).posture(Map.of())));
        }
        if (ways.size() != sheet.exercises().size()) {
            throw new IllegalStateException("the plan gives %d exercises, its sheet has %d"
                    .formatted(ways.size(), sheet.exercises().size()));
        }
        var exercises = new ArrayList<GuideExercise>();
        for (int i = 0; i < ways.size(); i++) {
            exercises.add(exercise(ways.get(i), sheet.exercises().get(i), i));
        }
        return exercises;
    }

    /** An exercise and the way that it goes for this person. */
    private record Way(Exercise exercise, Posture start, Posture end) {}

    private GuideExercise exercise(Way way, SheetExercise text, int index) {
        Exercise exercise = way.exercise();
        Posture start = way.start();
        Posture end = way.end();
        Side side = visit.file().episode().side();
        var motion = new Motion(List.of(new Motion.Key(start, 0), new Motion.Key(end, 1)));
        List<Figure> steps = Figure.along(ExerciseFigures.still(exercise, start, side), motion, PICTURES);
        Figure last = Figure.of(ExerciseFigures.movement(exercise, start, end, side));
        // Both pictures in one frame, so that they can stand side by side.
        var all = new ArrayList<>(steps);
        all.add(last);
        var frame = Figure.commonBounds(all);
        var moving = new slipway.pictures.svg.Words(
                "figure-" + (index + 1), text.name(), text.pictures().startShows());
        var still = new slipway.pictures.svg.Words(
                "end-" + (index + 1), text.name(), text.pictures().endShows());
        List<String> pictures = drawn(steps, Look.paper(), moving, frame);
        String ended = last.svg(Look.paper(), still, frame);
        DarkFigures dark = DarkFigures.all(List.of(
                DarkFigures.of(pictures, drawn(steps, Look.dark(), moving, frame)),
                DarkFigures.of(List.of(ended), List.of(last.svg(Look.dark(), still, frame)))));
        return new GuideExercise(
                text, MovingFigure.of(pictures), ended, cues(exercise), dark, DATA.value("easier-reach"));
    }

    private static List<String> drawn(List<Figure> figures, Look look, slipway.pictures.svg.Words words, Bounds frame) {
        return figures.stream().map(figure -> figure.svg(look, words, frame)).toList();
    }

    /** The first sentence of the step that goes to the end, and of the one that comes back after it. */
    private GuideExercise.Cues cues(Exercise exercise) {
        var poses = exercise.movement().poses();
        List<Instructions.Step> steps = exercise.instructions().steps();
        String far = poses.get(poses.size() - 1).id();
        int there = leadingTo(far, steps, 0).orElse(steps.size() - 1);
        Optional<Integer> back = leadingTo(poses.get(0).id(), steps, there + 1);
        return new GuideExercise.Cues(
                sentence(steps.get(there)),
                back.map(steps::get).map(this::sentence).orElse(words.get("cue.back")));
    }

    private static Optional<Integer> leadingTo(String pose, List<Instructions.Step> steps, int from) {
        for (int i = from; i < steps.size(); i++) {
            if (steps.get(i).pose().filter(pose::equals).isPresent()) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private String sentence(Instructions.Step step) {
        String text = step.text().in(language);
        int end = text.indexOf(". ");
        return end < 0 ? text : text.substring(0, end + 1);
    }
}
