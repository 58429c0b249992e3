package slipway.study.run;

import java.util.Arrays;

/** What came of one person under one way of dosing. */
final class Outcome {
    private final long[] values = new long[Measure.values().length];

    void add(Measure measure, long amount) {
        values[measure.ordinal()] += amount;
    }

    void set(Measure measure, long amount) {
        values[measure.ordinal()] = amount;
    }

    long get(Measure measure) {
        return values[measure.ordinal()];
    }

    @Override
    public String toString() {
        return Arrays.toString(values);
    }
}
