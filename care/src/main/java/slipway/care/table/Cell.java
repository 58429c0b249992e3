package slipway.care.table;

/**
 * One value of a table.
 *
 * @param text without the blanks around it and without quotes
 * @param line from 1
 * @param column from 1, where it begins
 */
public record Cell(String text, int line, int column) {
    public boolean blank() {
        return text.isEmpty();
    }
}
