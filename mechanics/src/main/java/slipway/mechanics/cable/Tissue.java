package slipway.mechanics.cable;

/**
 * What the cables and their bed are made of, one value per lane (draw). Indexed {@code [node][lane]}; edge values
 * belong to the edge from the node to its parent, those of node 0 are ignored.
 *
 * <p>The tension is {@code axialStiffness × g(strain)} with {@code g(ε) = φ ε + (1 − φ) (ρ(ε − ε₀) − ρ(−ε₀))} and the
 * ramp {@code ρ(x) = (x + √(x² + ω²)) / 2}: slope φ while the nerve is slack, 1 when it is taut, and no tension in the
 * reference state.
 *
 * @param axialStiffness EA of each edge, relative to the sciatic nerve at mid-thigh
 * @param holdPerM stiffness that holds each node to its bed: coupling times the length of the node's share, plus an end
 *     spring where there is one, 1/m
 * @param toeMidpoint ε₀ of each lane
 * @param toeWidth ω of each lane, positive
 * @param slackSlope φ of each lane, within 0 and 1
 */
public record Tissue(
        double[][] axialStiffness, double[][] holdPerM, double[] toeMidpoint, double[] toeWidth, double[] slackSlope) {
    /** Number of lanes. */
    public int lanes() {
        return toeMidpoint.length;
    }
}
