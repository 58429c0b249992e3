package slipway.reasoning.basis;

/**
 * One row of a coefficient table.
 *
 * @param id stable name
 * @param value finite
 * @param unit as written in the table
 * @param mark {@code seen}, {@code memory}, {@code common practice} or {@code assumption}
 * @param source author and year with the place, or why the assumption was made
 */
public record Coefficient(String id, double value, String unit, String mark, String source) {
    public Coefficient {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("coefficient %s must be a finite number, was %s".formatted(id, value));
        }
        if (mark.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException("coefficient " + id + " lacks its mark or its source");
        }
    }
}
