package slipway.documents.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.care.figure.ExerciseFigures;
import slipway.care.visit.Companion;
import slipway.care.visit.VisitPlan;
import slipway.documents.pdf.Svg;
import slipway.documents.sheet.BodyPart;
import slipway.documents.sheet.Dose;
import slipway.documents.sheet.HomeSheet;
import slipway.documents.sheet.SheetExercise;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Instructions;
import slipway.exercises.exercise.KeyPose;
import slipway.exercises.exercise.Language;
import slipway.exercises.exercise.Phrase;
import slipway.exercises.exercise.Setting;
import slipway.exercises.exercise.Surface;
import slipway.exercises.unload.PatientRules;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.pictures.figure.Figure;
import slipway.pictures.look.Look;
import slipway.pictures.space.Bounds;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.dose.DosedExercise;

/** The sheet for home of a visit. */
public final class SheetOfVisit {
    private static final Coefficients DATA = Coefficients.load("sheet.csv");

    private final VisitPlan visit;
    private final Language language;
    private final Words words;
    private final boolean brief;

    private SheetOfVisit(VisitPlan visit, Language language, boolean brief) {
        this.brief = brief;
        this.visit = visit;
        this.language = language;
        this.words = Words.beside(SheetOfVisit.class, language);
    }

    /**
     * The sheet.
     *
     * @param given day on which it is given
     * @param version of this sheet for this person
     * @throws IllegalArgumentException if the plan was stopped or gives no exercise: then there is no sheet
     */
    public static HomeSheet of(VisitPlan visit, Language language, LocalDate given, String version) {
        if (visit.stopped() || visit.given().isEmpty()) {
            throw new IllegalArgumentException("a sheet needs a plan with at least one exercise");
        }
        return new SheetOfVisit(visit, language, false).sheet(given, version);
    }

    /**
     * The same without the common errors, for large type, where an exercise would not fit on its page with them.
     *
     * @throws IllegalArgumentException as {@link #of}
     */
    public static HomeSheet brief(VisitPlan visit, Language language, LocalDate given, String version) {
        if (visit.stopped() || visit.given().isEmpty()) {
            throw new IllegalArgumentException("a sheet needs a plan with at least one exercise");
        }
        return new SheetOfVisit(visit, language, true).sheet(given, version);
    }

    private HomeSheet sheet(LocalDate given, String version) {
        var clinic = visit.file().episode().clinic();
        var head = new HomeSheet.Head(
                visit.file().patient().name().orElse(words.get("blank")),
                BodyPart.leg(side()),
                given,
                version,
                new HomeSheet.Clinic(
                        clinic.name().orElse(words.get("blank")),
                        "",
                        clinic.phone().orElse(words.get("blank"))),
                clinic.emergencyNumber(),
                mark());
        return new HomeSheet(
                head,
                language,
                unload(),
                new HomeSheet.Rules((int) DATA.value("settle-minutes"), (int) DATA.value("rest-minutes")),
                exercises(),
                general(),
                Optional.empty());
    }

    /** Above the name: that the person is invented, and that no speaker has reviewed the words. */
    private String mark() {
        String invented = visit.file().provenance().invented() ? words.get("invented") : "";
        String draft = words.reviewed() ? "" : words.get("draft");
        return (invented + " " + draft).strip();
    }

    private Side side() {
        return visit.file().episode().side();
    }

    private List<String> unload() {
        return visit.unload().stream()
                .flatMap(advice -> advice.doInstead().stream())
                .map(phrase -> phrase.in(language))
                .toList();
    }

    private List<SheetExercise> exercises() {
        var exercises = new ArrayList<SheetExercise>();
        for (DosedExercise dosed : visit.given()) {
            var range = dosed.range();
            exercises.add(exercise(
                    visit.exercise(range.candidate().id()), range.candidate().start(), range.end(), doses(dosed)));
        }
        for (Companion companion : visit.companions()) {
            var poses = companion.exercise().movement().poses();
            exercises.add(exercise(
                    companion.exercise(),
                    poses.get(0).posture(Map.of()),
                    poses.get(poses.size() > 1 ? 1 : 0).posture(Map.of()),
                    doses(companion.exercise())));
        }
        return exercises;
    }

    private SheetExercise exercise(Exercise exercise, Posture start, Posture end, SheetExercise.Doses doses) {
        PatientRules rules = PatientRules.bundled();
        return new SheetExercise(
                exercise.name().in(language),
                part(exercise),
                pictures(exercise, start, end),
                props(exercise.setting()),
                exercise.instructions().steps().stream()
                        .map(step -> step.text().in(language))
                        .toList(),
                doses,
                new SheetExercise.Feelings(
                        // What is permitted in general stands once, with the rules for every exercise.
                        exercise.instructions().feel().stream()
                                .map(feel -> feel.in(language))
                                .toList(),
                        texts(exercise.instructions().stop(), rules.stop())),
                cautions(exercise));
    }

    /** What holds for the whole sheet; in large type also how far to go, which stands with each exercise otherwise. */
    private List<String> general() {
        var general = new ArrayList<String>();
        if (brief) {
            general.add(words.get("limit.picture"));
        }
        if (brief && noFloor()) {
            general.add(words.get("surface.bed"));
        }
        general.add(words.get("caution.therapist"));
        return general;
    }

    private boolean noFloor() {
        return visit.file().episode().abilities().canLieOnFloor().equals(Optional.of(false));
    }

    /** How far, what to avoid, where, and what the exercise itself warns of. */
    private List<String> cautions(Exercise exercise) {
        var cautions = new ArrayList<String>();
        if (!brief && visit.exercises().containsKey(exercise.id())) {
            cautions.add(words.get("limit.picture"));
        }
        if (!brief) {
            exercise.instructions()
                    .errors()
                    .forEach(error -> cautions.add(error.text().in(language)));
        }
        if (!brief && noFloor() && exercise.setting().surfaces().contains(Surface.BED)) {
            cautions.add(words.get("surface.bed"));
        }
        exercise.instructions().cautions().forEach(caution -> cautions.add(caution.in(language)));
        return cautions;
    }

    private Optional<BodyPart> part(Exercise exercise) {
        return switch (exercise.movement().side()) {
            case AFFECTED -> Optional.of(BodyPart.leg(side()));
            case OTHER -> Optional.of(BodyPart.leg(side().opposite()));
            case BOTH, ALTERNATE, TRUNK -> Optional.empty();
        };
    }

    private SheetExercise.Pictures pictures(Exercise exercise, Posture start, Posture end) {
        Figure still = Figure.of(ExerciseFigures.still(exercise, start, side()));
        Figure moved = Figure.of(ExerciseFigures.movement(exercise, start, end, side()));
        Bounds frame = Figure.commonBounds(List.of(still, moved));
        String first = stepTo(exercise, 0);
        String far = stepTo(exercise, 1);
        return new SheetExercise.Pictures(
                draw(still, exercise, first, frame), draw(moved, exercise, far, frame), far, first, far);
    }

    private Svg draw(Figure figure, Exercise exercise, String shows, Bounds frame) {
        var name = new slipway.pictures.svg.Words(exercise.id(), exercise.name().in(language), shows);
        return Svg.parse(figure.svg(Look.print(), name, frame));
    }

    /** The step that leads to a pose, in words; the first one if no step names the pose. */
    private String stepTo(Exercise exercise, int pose) {
        var poses = exercise.movement().poses();
        String id = poses.get(Math.min(pose, poses.size() - 1)).id();
        List<Instructions.Step> steps = exercise.instructions().steps();
        return steps.stream()
                .filter(step -> step.pose().filter(id::equals).isPresent())
                .findFirst()
                .orElse(steps.get(0))
                .text()
                .in(language);
    }

    private List<String> props(Setting setting) {
        return setting.props().stream()
                .map(Setting.PropUse::prop)
                .distinct()
                .map(prop -> words.get("prop." + prop.key()))
                .toList();
    }

    private SheetExercise.Doses doses(DosedExercise dosed) {
        var dose = dosed.dose();
        int seconds = (int) Math.round(dose.secondsPerDirection());
        int easier = part(dose.repetitions(), DATA.value("easier-share"));
        return new SheetExercise.Doses(
                new Dose.Repeated(dose.repetitions(), dose.sets(), seconds, dose.sessionsPerDay()),
                new Dose.Repeated(easier, 1, slower(seconds), 1),
                words.get("easier"));
    }

    /** The dose of a companion is its own; an easier day is half of it. */
    private SheetExercise.Doses doses(Exercise exercise) {
        return new SheetExercise.Doses(
                dose(exercise, 1), dose(exercise, DATA.value("easier-share")), words.get("easier"));
    }

    private static Dose dose(Exercise exercise, double share) {
        var dose = exercise.dose();
        if (dose.minutes().isPresent()) {
            return new Dose.Lasting(part(dose.minutes().getAsInt(), share), dose.sessionsPerDay());
        }
        KeyPose far =
                exercise.movement().poses().get(exercise.movement().poses().size() > 1 ? 1 : 0);
        int repetitions = part(dose.repetitions(), share);
        if (far.holdSeconds() > 0) {
            return new Dose.Held((int) Math.round(far.holdSeconds()), repetitions, dose.sessionsPerDay());
        }
        int seconds = (int) Math.max(1, Math.round(far.reachSeconds()));
        return new Dose.Repeated(
                repetitions, dose.sets(), share < 1 ? slower(seconds) : seconds, dose.sessionsPerDay());
    }

    /** The pace of an easier day, rounded to the slower side. */
    private static int slower(int seconds) {
        return (int) Math.ceil(seconds * DATA.value("easier-times"));
    }

    private static int part(int whole, double share) {
        return Math.max(1, (int) Math.ceil(whole * share));
    }

    private List<String> texts(List<Phrase> own, Phrase always) {
        var texts = new ArrayList<String>();
        own.forEach(phrase -> texts.add(phrase.in(language)));
        texts.add(always.in(language));
        return texts;
    }
}
