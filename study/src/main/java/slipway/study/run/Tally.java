package slipway.study.run;

import java.io.Serializable;

/**
 * Sums over people, of every measure and way of dosing: values, squares, and products with the main comparator, which is
 * the first way. Whole numbers, so that any order of adding gives the same; too many people are an error, not a wrong
 * number. Size does not depend on the number of people.
 */
public final class Tally implements Serializable {
    private static final long serialVersionUID = 1L;

    private final long[][] sum;
    private final long[][] square;
    private final long[][] cross;
    /** People by day of the goal, the last entry those who did not reach it before the end. */
    private final long[][] goalDay;

    private long people;

    /** Nobody yet. */
    public Tally(int policies, int days) {
        int measures = Measure.values().length;
        sum = new long[policies][measures];
        square = new long[policies][measures];
        cross = new long[policies][measures];
        goalDay = new long[policies][days + 1];
    }

    /** The outcomes of one person, by way of dosing. */
    void add(Outcome[] outcomes) {
        people++;
        for (int p = 0; p < outcomes.length; p++) {
            for (Measure measure : Measure.values()) {
                int m = measure.ordinal();
                long value = outcomes[p].get(measure);
                sum[p][m] = Math.addExact(sum[p][m], value);
                square[p][m] = Math.addExact(square[p][m], Math.multiplyExact(value, value));
                cross[p][m] = Math.addExact(cross[p][m], Math.multiplyExact(value, outcomes[0].get(measure)));
            }
            goalDay[p][(int) outcomes[p].get(Measure.DAYS_TO_GOAL)]++;
        }
    }

    /** Adds other people. */
    public void add(Tally other) {
        people = Math.addExact(people, other.people);
        add(sum, other.sum);
        add(square, other.square);
        add(cross, other.cross);
        add(goalDay, other.goalDay);
    }

    private static void add(long[][] to, long[][] more) {
        for (int i = 0; i < to.length; i++) {
            for (int j = 0; j < to[i].length; j++) {
                to[i][j] = Math.addExact(to[i][j], more[i][j]);
            }
        }
    }

    /** How many people. */
    public long people() {
        return people;
    }

    /** Sum of a measure. */
    public long sum(int policy, Measure measure) {
        return sum[policy][measure.ordinal()];
    }

    /** Sum of its squares. */
    public long square(int policy, Measure measure) {
        return square[policy][measure.ordinal()];
    }

    /** Sum of its products with the main comparator. */
    public long cross(int policy, Measure measure) {
        return cross[policy][measure.ordinal()];
    }

    /** How many people reached the goal on a day. */
    public long goalOn(int policy, int day) {
        return goalDay[policy][day];
    }

    /** Everything, for writing and for comparing: people, then the four tables row by row. */
    public long[] numbers() {
        long[][][] tables = {sum, square, cross, goalDay};
        var all = java.util.stream.LongStream.builder();
        all.add(people);
        for (long[][] table : tables) {
            for (long[] row : table) {
                for (long value : row) {
                    all.add(value);
                }
            }
        }
        return all.build().toArray();
    }

    /**
     * Reads what {@link #numbers} wrote.
     *
     * @throws IllegalArgumentException if it is not of this size
     */
    public static Tally of(int policies, int days, long[] numbers) {
        var tally = new Tally(policies, days);
        if (numbers.length != tally.numbers().length) {
            throw new IllegalArgumentException(
                    "a saved tally must have %d numbers, had %d".formatted(tally.numbers().length, numbers.length));
        }
        tally.people = numbers[0];
        int next = 1;
        for (long[][] table : new long[][][] {tally.sum, tally.square, tally.cross, tally.goalDay}) {
            for (long[] row : table) {
                System.arraycopy(numbers, next, row, 0, row.length);
                next += row.length;
            }
        }
        return tally;
    }
}
