package slipway.documents.guide;

import slipway.documents.sheet.Dose;
import slipway.documents.sheet.SheetExercise;
import slipway.pictures.figure.MovingFigure;

/**
 * One exercise of the guide.
 *
 * @param text what the sheet says about it
 * @param figure how it moves
 * @param end the picture of its end, for whoever wants no motion
 * @param cues a few words for the way there and for the way back
 * @param dark colours of figure and end on a dark screen
 * @param easierReach share of the way to the end on a harder day, above 0 and at most 1
 */
record GuideExercise(
        SheetExercise text, MovingFigure figure, String end, Cues cues, DarkFigures dark, double easierReach) {
    GuideExercise {
        if (!(easierReach > 0 && easierReach <= 1)) {
            throw new IllegalArgumentException(
                    "an easier day must reach above 0 and at most 1 of the way, was " + easierReach);
        }
    }

    /** A few words for the way there and for the way back. */
    record Cues(String there, String back) {}

    Dose usualDose() {
        return text.doses().usual();
    }

    Dose easierDose() {
        return text.doses().easier();
    }
}
