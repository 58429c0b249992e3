package slipway.web.episode.tolerance;

/**
 * One neural test in the form.
 *
 * @param at path of the row, for example {@code tests[0]}
 * @param test which test the row starts with; blank for a spare one
 * @param side the leg that is moved
 * @param movements how many remote movements are recorded
 */
public record TestRow(String at, String test, String side, int movements) {
    /** Rows for remote movements: those recorded and one more. */
    public int movementRows() {
        return movements + 1;
    }
}
