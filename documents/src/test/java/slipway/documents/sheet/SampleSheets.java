package slipway.documents.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.documents.sheet.HomeSheet.Clinic;
import slipway.documents.sheet.HomeSheet.Head;
import slipway.documents.sheet.HomeSheet.Rules;
import slipway.documents.sheet.SheetExercise.Doses;
import slipway.documents.sheet.SheetExercise.Feelings;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Arms;

/** Invented people with sheets; the doses are made up for the tests and have no meaning. */
final class SampleSheets {
    static final String GUIDE = "https://clinic.example/g/7Q4K-2MNP";

    private SampleSheets() {}

    static Head head(String name, Language language) {
        boolean english = language == Language.EN;
        return new Head(
                name,
                BodyPart.RIGHT_LEG,
                LocalDate.of(2026, 3, 4),
                "3",
                new Clinic(
                        english ? "Harbour Street Clinic (invented)" : "Clínica del Puerto (inventada)",
                        "R. Almond, PT",
                        "555-0142"),
                english ? "911" : "112",
                english ? "Invented person" : "Persona inventada");
    }

    static HomeSheet sheet(Language language, int exercises) {
        return sheet("Marta Quill", language, exercises);
    }

    static HomeSheet sheet(String name, Language language, int exercises) {
        boolean english = language == Language.EN;
        return new HomeSheet(
                head(name, language),
                language,
                english
                        ? List.of(
                                "Stand up and walk a little after 20 minutes of sitting.",
                                "Take your wallet out of your back pocket.",
                                "Sleep on your back with a pillow under your knees.")
                        : List.of(
                                "Levántese y camine un poco después de 20 minutos sentada.",
                                "Saque la cartera del bolsillo de atrás.",
                                "Duerma boca arriba con una almohada debajo de las rodillas."),
                new Rules(2, 10),
                new ArrayList<>(exercises(language)).subList(0, exercises),
                List.of(),
                Optional.of(GUIDE));
    }

    static List<SheetExercise> exercises(Language language) {
        return language == Language.EN
                ? List.of(englishAnkle(), englishKnee(), englishHip(), englishWalk())
                : List.of(spanishAnkle(), spanishKnee());
    }

    private static Feelings feelings() {
        return new Feelings(
                List.of("a light pull behind the knee", "light tingling that is gone within 2 minutes"),
                List.of(
                        "tingling or numbness gets strong",
                        "your usual pain gets clearly stronger",
                        "a new pain starts"));
    }

    private static SheetExercise englishAnkle() {
        return new SheetExercise(
                "Ankle slide, lying on your back",
                Optional.of(BodyPart.RIGHT_LEG),
                SampleFigures.lying(
                        "ankle -20",
                        "ankle 10",
                        Arms.ALONG_SIDES,
                        "Pull your toes up toward you",
                        "A person lies on the back with straight legs. The right foot points away.",
                        "The same position. The toes of the right foot are pulled up."),
                List.of("a mat or a firm bed", "a small pillow"),
                List.of(
                        "Lie on your back. Put the pillow under your head.",
                        "Rest both legs straight.",
                        "Slowly pull the toes of your right foot up toward you.",
                        "Let them go down again, just as slowly."),
                new Doses(
                        new Dose.Repeated(8, 1, 3, 2), new Dose.Repeated(5, 1, 3, 1), "Make the movement half as big."),
                feelings(),
                List.of());
    }

    private static SheetExercise englishKnee() {
        return new SheetExercise(
                "Knee slide with a strap",
                Optional.of(BodyPart.RIGHT_LEG),
                SampleFigures.lying(
                        "hip 60 knee 90",
                        "hip 60 knee 40",
                        Arms.HOLD_STRAP,
                        "Straighten your knee part of the way",
                        "A person lies on the back. The right hip and knee are bent. A strap goes around the foot.",
                        "The right knee is straighter. The thigh has not moved."),
                List.of("a long strap or belt", "a mat"),
                List.of(
                        "Lie on your back. Bend your right hip and knee.",
                        "Put the strap around the front of your foot. Hold both ends.",
                        "Slowly straighten your knee until you feel a light pull.",
                        "Bend it again at once. Keep your thigh still.",
                        "Rest your other leg on the mat."),
                new Doses(new Dose.Repeated(10, 2, 3, 2), new Dose.Repeated(5, 1, 3, 1), ""),
                feelings(),
                List.of("Is your foot numb? Look at the skin under the strap each time."));
    }

    private static SheetExercise englishHip() {
        return new SheetExercise(
                "Hip slide with a strap",
                Optional.of(BodyPart.RIGHT_LEG),
                SampleFigures.lying(
                        "hip 5 knee 5",
                        "hip 40 knee 5",
                        Arms.HOLD_STRAP,
                        "Lift your straight leg with the strap",
                        "A person lies on the back with straight legs. A strap goes around the right foot.",
                        "The right leg is lifted less than half way. The knee is straight."),
                List.of("a long strap or belt"),
                List.of(
                        "Lie on your back with a strap around your right foot.",
                        "Lift the leg with your arms, not with your hip.",
                        "Go only as high as in the picture.",
                        "Let it down slowly."),
                new Doses(new Dose.Repeated(6, 1, 3, 1), new Dose.Repeated(3, 1, 3, 1), ""),
                feelings(),
                List.of());
    }

    private static SheetExercise englishWalk() {
        return new SheetExercise(
                "Easy walk",
                Optional.empty(),
                SampleFigures.standing(
                        "hip 5",
                        "hip 25 knee 20 other-hip -10",
                        "Walk on flat ground",
                        "A rough drawing that stands in for a walking person.",
                        "A rough drawing that stands in for a walking person."),
                List.of(),
                List.of(
                        "Wear flat shoes.",
                        "Walk at a speed at which you can talk.",
                        "Turn back while it is still easy."),
                new Doses(new Dose.Lasting(10, 2), new Dose.Lasting(5, 1), ""),
                new Feelings(List.of("tired muscles"), List.of("your leg gets weak or numb as you walk")),
                List.of());
    }

    private static SheetExercise spanishAnkle() {
        return new SheetExercise(
                "Deslizar el tobillo, boca arriba",
                Optional.of(BodyPart.RIGHT_LEG),
                SampleFigures.lying(
                        "ankle -20",
                        "ankle 10",
                        Arms.ALONG_SIDES,
                        "Suba los dedos hacia usted",
                        "Una persona boca arriba con las piernas rectas. El pie derecho apunta lejos.",
                        "La misma posición. Los dedos del pie derecho suben."),
                List.of("una colchoneta o una cama firme"),
                List.of(
                        "Acuéstese boca arriba con una almohada bajo la cabeza.",
                        "Descanse las dos piernas rectas.",
                        "Suba despacio los dedos del pie derecho hacia usted.",
                        "Bájelos igual de despacio."),
                new Doses(
                        new Dose.Repeated(8, 2, 3, 2), new Dose.Repeated(5, 1, 3, 1), "Haga el movimiento a la mitad."),
                new Feelings(
                        List.of("un tirón leve detrás de la rodilla", "un hormigueo leve que se va en 2 minutos"),
                        List.of("el hormigueo se hace fuerte", "su dolor de siempre sube de forma clara")),
                List.of());
    }

    private static SheetExercise spanishKnee() {
        return new SheetExercise(
                "Estirar la parte de atrás del muslo",
                Optional.of(BodyPart.RIGHT_LEG),
                SampleFigures.lying(
                        "hip 60 knee 90",
                        "hip 60 knee 40",
                        Arms.HOLD_STRAP,
                        "Estire la rodilla una parte del camino",
                        "Una persona boca arriba. La cadera y la rodilla derechas están dobladas.",
                        "La rodilla derecha está más recta. El muslo no se ha movido."),
                List.of("una correa larga"),
                List.of(
                        "Acuéstese boca arriba y doble la cadera y la rodilla derechas.",
                        "Ponga la correa alrededor del pie.",
                        "Estire la rodilla hasta sentir un tirón leve."),
                new Doses(new Dose.Held(20, 3, 1), new Dose.Held(10, 2, 1), ""),
                new Feelings(List.of("un tirón leve"), List.of("empieza un dolor nuevo")),
                List.of("¿Tiene el pie dormido? Mire la piel bajo la correa cada vez."));
    }
}
