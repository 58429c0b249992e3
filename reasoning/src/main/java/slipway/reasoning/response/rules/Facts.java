package slipway.reasoning.response.rules;

import java.util.Arrays;

/** The facts of one report with its history. What was not set is unknown. */
public final class Facts {
    private final double[] values = new double[Fact.values().length];

    /** Nothing known. */
    public Facts() {
        Arrays.fill(values, Double.NaN);
    }

    /** The same facts, to go on from on their own. */
    public Facts copy() {
        var copy = new Facts();
        System.arraycopy(values, 0, copy.values, 0, values.length);
        return copy;
    }

    /** Sets a fact; not a number makes it unknown. */
    public Facts set(Fact fact, double value) {
        values[fact.ordinal()] = value;
        return this;
    }

    /** Sets a yes or no. */
    public Facts set(Fact fact, boolean value) {
        return set(fact, value ? 1 : 0);
    }

    /** The value; not a number if unknown. */
    public double get(Fact fact) {
        return values[fact.ordinal()];
    }
}
