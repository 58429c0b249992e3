package slipway.web.episode.examine;

import java.util.List;

/**
 * One item of the examination.
 *
 * @param item its word in the vocabulary
 * @param more whether it stands among the further rows of its block
 * @param five whether it is part of the five-minute path
 * @param cells right side, left side
 */
public record ExamRow(String item, String label, boolean more, boolean five, List<ExamCell> cells) {
    public ExamRow {
        cells = List.copyOf(cells);
    }

    /** Whether something is recorded on either side. */
    public boolean recorded() {
        return cells.stream().anyMatch(ExamCell::recorded);
    }
}
