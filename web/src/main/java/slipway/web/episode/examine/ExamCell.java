package slipway.web.episode.examine;

import java.util.List;
import slipway.web.form.Option;

/**
 * One item on one side.
 *
 * @param path of the result in the case
 * @param side {@code right} or {@code left}
 * @param options what can be recorded; the word that is recorded stands among them as it was written
 * @param chosen what is recorded; blank for not tested
 * @param degreesPath of the angle; blank where none is measured
 * @param degrees the angle as typed
 */
public record ExamCell(
        String path, String side, List<Option> options, String chosen, String degreesPath, String degrees) {
    public ExamCell {
        options = List.copyOf(options);
    }

    /** Whether something is recorded. */
    public boolean recorded() {
        return !chosen.isEmpty() || !degrees.isEmpty();
    }

    /** Whether an angle belongs to it. */
    public boolean measured() {
        return !degreesPath.isEmpty();
    }
}
