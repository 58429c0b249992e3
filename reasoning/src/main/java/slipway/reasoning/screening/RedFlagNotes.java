package slipway.reasoning.screening;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;

/**
 * Reads free red-flag notes ("new sense of incomplete bladder emptying") as answers to questions. A note that is not
 * understood is reported, never taken as harmless; an empty list answers nothing.
 */
public final class RedFlagNotes {
    private static final List<CSVRecord> ROWS = ReasoningData.table("screening/red-flag-words.csv");

    private RedFlagNotes() {}

    /**
     * What a list of notes says.
     *
     * @param answers yes, by question id
     * @param notUnderstood notes that match no known wording
     */
    public record Reading(Map<String, Answer> answers, List<String> notUnderstood) {
        public Reading {
            answers = Map.copyOf(answers);
            notUnderstood = List.copyOf(notUnderstood);
        }
    }

    /** Reads the notes by {@code screening/red-flag-words.csv}. */
    public static Reading read(List<String> notes) {
        var answers = new LinkedHashMap<String, Answer>();
        var notUnderstood = new ArrayList<String>();
        for (String note : notes) {
            String text = note.toLowerCase(Locale.ROOT);
            boolean understood = false;
            for (CSVRecord row : ROWS) {
                if (Pattern.compile(row.get("pattern")).matcher(text).find() && !denied(text)) {
                    answers.put(row.get("question"), Answer.YES);
                    understood = true;
                }
            }
            if (!understood) {
                notUnderstood.add(note);
            }
        }
        return new Reading(answers, notUnderstood);
    }

    private static boolean denied(String text) {
        return text.startsWith("no ") || text.startsWith("denies") || text.contains("without ");
    }
}
