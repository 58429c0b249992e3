package slipway.care.table;

import java.util.ArrayList;
import java.util.List;
import slipway.exercises.yaml.Mistake;

/** Splits a table into values that know their place. One row a line; commas between values, quotes around them if need be. */
final class CsvCells {
    private final List<List<Cell>> rows = new ArrayList<>();
    private final List<Mistake> mistakes = new ArrayList<>();

    private CsvCells() {}

    /** The rows of a text; empty lines and lines that begin with # are left out. */
    static CsvCells read(String text) {
        var cells = new CsvCells();
        int number = 0;
        for (String line : text.split("\r\n|\n|\r", -1)) {
            number++;
            if (!line.isBlank() && !line.startsWith("#")) {
                cells.rows.add(cells.split(line, number));
            }
        }
        return cells;
    }

    List<List<Cell>> rows() {
        return rows;
    }

    /** Quotes that do not close. */
    List<Mistake> mistakes() {
        return mistakes;
    }

    private List<Cell> split(String line, int number) {
        var row = new ArrayList<Cell>();
        int start = 0;
        boolean quoted = false;
        for (int i = 0; i <= line.length(); i++) {
            boolean end = i == line.length();
            if (!end && line.charAt(i) == '"') {
                quoted = !quoted;
            }
            if (end && quoted) {
                mistakes.add(new Mistake(number, start + 1, "", "a quote is opened and not closed in this line"));
            }
            if (end || (line.charAt(i) == ',' && !quoted)) {
                row.add(cell(line.substring(start, i), number, start + 1));
                start = i + 1;
            }
        }
        return row;
    }

    private static Cell cell(String raw, int line, int column) {
        String text = raw.strip();
        int blanks = raw.indexOf(text);
        if (text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"")) {
            text = text.substring(1, text.length() - 1).replace("\"\"", "\"").strip();
        }
        return new Cell(text, line, column + Math.max(0, blanks));
    }
}
