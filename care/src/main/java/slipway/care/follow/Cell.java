package slipway.care.follow;

/**
 * One value of a table.
 *
 * @param text without the blanks around it and without quotes
 * @param line from 1
 * @param column from 1, where it begins
 */
record Cell(String text, int line, int column) {
    boolean blank() {
        return text.isEmpty();
    }
}
