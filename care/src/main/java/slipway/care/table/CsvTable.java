package slipway.care.table;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import slipway.exercises.yaml.Mistake;

/** A table with a row of names above it. */
public final class CsvTable {
    private final List<String> columns;
    private final List<Mistake> mistakes;

    private CsvTable(List<String> columns, List<Mistake> mistakes) {
        this.columns = columns;
        this.mistakes = mistakes;
    }

    /**
     * The rows below the names, each with as many values as there are columns.
     *
     * @param columns the names that the first row must have, in their order
     * @param mistakes gets what is wrong; rows of the wrong length are named and left out
     */
    public static List<List<Cell>> rows(byte[] bytes, int maxBytes, List<String> columns, List<Mistake> mistakes) {
        return new CsvTable(columns, mistakes).read(bytes, maxBytes);
    }

    private List<List<Cell>> read(byte[] bytes, int maxBytes) {
        if (bytes.length > maxBytes) {
            ofFile("must have at most %d bytes, had %d".formatted(maxBytes, bytes.length));
            return List.of();
        }
        CsvCells cells;
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            cells = CsvCells.read(text.replaceFirst("^\uFEFF", ""));
        } catch (CharacterCodingException e) {
            ofFile("must be UTF-8 text");
            return List.of();
        }
        mistakes.addAll(cells.mistakes());
        if (cells.rows().isEmpty()) {
            ofFile("is empty; it must begin with the row " + String.join(",", columns));
            return List.of();
        }
        if (!header(cells.rows().get(0))) {
            return List.of();
        }
        return whole(cells.rows().subList(1, cells.rows().size()));
    }

    private void ofFile(String message) {
        mistakes.add(new Mistake(1, 1, "", "the file " + message));
    }

    private List<List<Cell>> whole(List<List<Cell>> rows) {
        var whole = new ArrayList<List<Cell>>();
        for (List<Cell> cells : rows) {
            if (cells.size() == columns.size()) {
                whole.add(cells);
            } else {
                add(
                        cells.get(cells.size() - 1),
                        "the row must have %d values, had %d".formatted(columns.size(), cells.size()));
            }
        }
        return whole;
    }

    private boolean header(List<Cell> header) {
        List<String> names = header.stream().map(Cell::text).toList();
        if (names.equals(columns)) {
            return true;
        }
        for (int i = 0; i < Math.max(names.size(), columns.size()); i++) {
            Cell at = header.get(Math.min(i, header.size() - 1));
            if (i >= names.size()) {
                add(at, "the column %s is missing".formatted(columns.get(i)));
            } else if (i >= columns.size()) {
                add(at, "there is no column \"%s\"".formatted(names.get(i)));
            } else if (!names.get(i).equals(columns.get(i))) {
                add(at, "column %d must be %s, was \"%s\"".formatted(i + 1, columns.get(i), names.get(i)));
            }
        }
        return false;
    }

    private void add(Cell at, String message) {
        mistakes.add(new Mistake(at.line(), at.column(), "", message));
    }
}
