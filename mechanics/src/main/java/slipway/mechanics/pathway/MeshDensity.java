package slipway.mechanics.pathway;

/**
 * How fine the mesh is.
 *
 * @param fineM longest cell within a joint zone, m
 * @param coarseM longest cell elsewhere, m
 * @param farFactor how much coarser the other leg is below the division of its sciatic nerve
 * @param parts into how many equal parts every cell is divided
 */
public record MeshDensity(double fineM, double coarseM, double farFactor, int parts) {
    /** The mesh used for people; its error against a much finer one is in docs/validation.md. */
    public static final MeshDensity STANDARD = new MeshDensity(0.010, 0.025, 3, 1);

    public MeshDensity {
        if (!(fineM > 0 && fineM <= coarseM && coarseM < 0.2 && farFactor >= 1 && parts >= 1)) {
            throw new IllegalArgumentException("mesh: 0 < fine <= coarse < 0.2 m, a factor and parts of 1 or more");
        }
    }

    /** Every cell divided into so many equal parts. */
    public MeshDensity refined(int times) {
        return new MeshDensity(fineM, coarseM, farFactor, parts * times);
    }
}
