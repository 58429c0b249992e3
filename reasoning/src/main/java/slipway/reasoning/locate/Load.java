package slipway.reasoning.locate;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * A number per variant, of which only few differ: the exponential of a curve is taken once per different number.
 *
 * @param values the different numbers
 * @param index per variant, which of them; empty if there is no load at all
 */
record Load(double[] values, int[] index) {
    static final Load NONE = new Load(new double[0], new int[0]);

    static Load of(double[] perVariant) {
        Map<Double, Integer> seen = new HashMap<>();
        int[] index = new int[perVariant.length];
        double[] values = new double[perVariant.length];
        for (int v = 0; v < perVariant.length; v++) {
            // + 0.0 turns a negative zero into the positive one.
            Integer known = seen.putIfAbsent(perVariant[v] + 0.0, seen.size());
            index[v] = known == null ? seen.size() - 1 : known;
            values[index[v]] = perVariant[v];
        }
        return new Load(Arrays.copyOf(values, seen.size()), index);
    }

    /** Each number to a power. */
    Load power(double power) {
        return power == 1
                ? this
                : new Load(Arrays.stream(values).map(x -> Math.pow(x, power)).toArray(), index);
    }

    boolean isNone() {
        return index.length == 0;
    }
}
