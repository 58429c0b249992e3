package slipway.mechanics.parameters;

/** One value for every parameter, on its natural scale. Immutable. */
public final class ParameterVector {
    private final double[] values;

    /**
     * @param values by ordinal of {@link ModelParameter}
     * @throws IllegalArgumentException if a value is not positive and finite
     */
    public ParameterVector(double[] values) {
        if (values.length != ModelParameter.values().length) {
            throw new IllegalArgumentException("one value per parameter is needed, got " + values.length);
        }
        for (ModelParameter parameter : ModelParameter.values()) {
            double value = values[parameter.ordinal()];
            if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(parameter.key() + " must be positive, was " + value);
            }
        }
        this.values = values.clone();
    }

    /** The value of a parameter in its unit. */
    public double get(ModelParameter parameter) {
        return values[parameter.ordinal()];
    }

    /** This vector with one value changed. */
    public ParameterVector with(ModelParameter parameter, double value) {
        double[] changed = values.clone();
        changed[parameter.ordinal()] = value;
        return new ParameterVector(changed);
    }
}
