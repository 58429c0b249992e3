package slipway.documents.guide;

import slipway.documents.sheet.Dose;
import slipway.documents.sheet.SheetExercise;

/**
 * One exercise of the guide.
 *
 * @param text what the sheet says about it
 * @param figure how it moves
 * @param end the picture of its end, for whoever wants no motion
 * @param cues a few words for the way there and for the way back
 * @param easier how the movement changes on a harder day
 */
record GuideExercise(SheetExercise text, MovingFigure figure, String end, Cues cues, Easier easier) {

    /** A few words for the way there and for the way back. */
    record Cues(String there, String back) {}

    /**
     * How the movement changes on a harder day.
     *
     * @param reach share of the way to the end, above 0 and at most 1
     * @param times how many times as long each way takes, 1 or more
     */
    record Easier(double reach, double times) {
        Easier {
            if (!(reach > 0 && reach <= 1 && times >= 1 && times <= 10)) {
                throw new IllegalArgumentException(
                        "an easier day must reach above 0 and at most 1 of the way and take 1 to 10 times as long, was %s and %s"
                                .formatted(reach, times));
            }
        }

        /** The easier dose at the slower pace; rounded to the slower side. */
        Dose slowed(Dose dose) {
            return dose instanceof Dose.Repeated r
                    ? new Dose.Repeated(
                            r.repetitions(), r.sets(), (int) Math.ceil(r.secondsEachWay() * times), r.sessionsPerDay())
                    : dose;
        }
    }

    Dose usualDose() {
        return text.doses().usual();
    }

    Dose easierDose() {
        return easier.slowed(text.doses().easier());
    }
}
