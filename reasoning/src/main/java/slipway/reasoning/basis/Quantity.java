package slipway.reasoning.basis;

/**
 * A number that a reason rests on.
 *
 * @param name what it is, for example {@code onset}
 * @param value finite
 * @param unit for example {@code deg}; empty for a plain number
 */
public record Quantity(String name, double value, String unit) {
    public Quantity {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("%s must be a finite number, was %s %s".formatted(name, value, unit));
        }
    }
}
