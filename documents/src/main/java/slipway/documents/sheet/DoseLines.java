package slipway.documents.sheet;

import java.util.ArrayList;
import java.util.List;
import slipway.documents.words.Words;

/** A dose in words, the same on paper and on the phone. */
public final class DoseLines {
    private DoseLines() {}

    /** The most important line first. */
    public static List<String> of(Dose dose, Words words) {
        var lines = new ArrayList<String>();
        if (dose instanceof Dose.Repeated repeated) {
            lines.add(words.counted("dose.repetitions", repeated.repetitions()));
            if (repeated.sets() > 1) {
                lines.add(words.get("dose.sets", repeated.sets()));
            }
            lines.add(words.counted("dose.pace", repeated.secondsEachWay()));
        } else if (dose instanceof Dose.Held held) {
            lines.add(words.counted("dose.repetitions", held.repetitions()));
            lines.add(words.counted("dose.hold", held.holdSeconds()));
        } else if (dose instanceof Dose.Lasting lasting) {
            lines.add(words.counted("dose.minutes", lasting.minutes()));
        }
        lines.add(words.counted("dose.sessions", dose.sessionsPerDay()));
        return lines;
    }
}
