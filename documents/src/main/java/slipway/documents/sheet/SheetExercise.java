package slipway.documents.sheet;

import java.util.List;
import java.util.Optional;
import slipway.documents.pdf.Svg;

/**
 * One exercise as it stands on a sheet, in the language of the sheet.
 *
 * @param name what the exercise is called
 * @param moves the limb that moves, which may be the other one than the sheet is about; absent where that makes no
 *     sense, as in walking
 * @param pictures how it starts and ends
 * @param props what the person needs, such as "a long strap"; may be empty
 * @param steps three to five short sentences, without numbers
 * @param doses how much
 * @param feelings what is fine and what is not
 * @param cautions what to heed with this exercise; may be empty
 */
public record SheetExercise(
        String name,
        Optional<BodyPart> moves,
        Pictures pictures,
        List<String> props,
        List<String> steps,
        Doses doses,
        Feelings feelings,
        List<String> cautions) {

    public SheetExercise {
        name = Checks.filled("exercise name", name);
        props = Checks.filledAll("props", props);
        steps = Checks.filledAll("steps", steps);
        Checks.within("number of steps of \"" + name + "\"", 3, 5, steps.size());
        cautions = Checks.filledAll("cautions", cautions);
    }

    /**
     * Start and end position side by side.
     *
     * @param movement what happens between them, a few words such as "Pull your toes up"
     * @param startShows what the first picture shows, for someone who cannot see it
     * @param endShows what the second picture shows
     */
    public record Pictures(Svg start, Svg end, String movement, String startShows, String endShows) {
        public Pictures {
            movement = Checks.filled("movement", movement);
            startShows = Checks.filled("what the start picture shows", startShows);
            endShows = Checks.filled("what the end picture shows", endShows);
        }
    }

    /** The usual dose and a smaller one for a day that is not so good; {@code easierHint} may be empty. */
    public record Doses(Dose usual, Dose easier, String easierHint) {
        public Doses {
            easierHint = easierHint.strip();
        }
    }

    /** What the person may feel and when to stop; at least one line each. */
    public record Feelings(List<String> mayFeel, List<String> stopIf) {
        public Feelings {
            mayFeel = Checks.filledAll("may feel", mayFeel);
            stopIf = Checks.filledAll("stop if", stopIf);
            Checks.within("number of lines of \"you may feel\"", 1, 6, mayFeel.size());
            Checks.within("number of lines of \"stop if\"", 1, 6, stopIf.size());
        }
    }
}
