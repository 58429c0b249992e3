package slipway.web.episode.examine;

import java.util.List;

/**
 * Items that are tested in one go.
 *
 * @param key its name in addresses and messages
 * @param normal the result that "rest of this block" fills in
 * @param rows all rows, the further ones last
 */
public record ExamBlock(String key, String normal, List<ExamRow> rows) {
    public ExamBlock {
        rows = List.copyOf(rows);
    }

    /** The rows that are always shown. */
    public List<ExamRow> first() {
        return rows.stream().filter(row -> !row.more() || row.recorded()).toList();
    }

    /** The rows that are shown when asked for. */
    public List<ExamRow> more() {
        return rows.stream().filter(row -> row.more() && !row.recorded()).toList();
    }

    /** Whether anything is recorded in it. */
    public boolean recorded() {
        return rows.stream().anyMatch(ExamRow::recorded);
    }

    /** Whether any of its rows is part of the five-minute path. */
    public boolean five() {
        return rows.stream().anyMatch(ExamRow::five);
    }
}
