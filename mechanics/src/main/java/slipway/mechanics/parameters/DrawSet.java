package slipway.mechanics.parameters;

import java.util.List;
import org.hipparchus.random.Well19937c;
import slipway.mechanics.nerve.Site;

/**
 * A fixed set of parameter vectors with the places of the sites that belong to them. Reproducible: the same seed gives
 * the same draws on every machine.
 *
 * @param vectors one parameter vector per draw
 * @param seed seed of the site positions; 0 leaves every site where the table has it
 */
public record DrawSet(List<ParameterVector> vectors, long seed) {
    public DrawSet {
        vectors = List.copyOf(vectors);
        if (vectors.isEmpty()) {
            throw new IllegalArgumentException("at least one draw is needed");
        }
    }

    /** One draw of exactly these parameters, with every site where the table has it. */
    public static DrawSet single(ParameterVector vector) {
        return new DrawSet(List.of(vector), 0);
    }

    /** Number of draws. */
    public int size() {
        return vectors.size();
    }

    /** Position of a site in each draw, as a fraction of its segment; below 0 or above 1 it lies in the next one. */
    public double[] sitePositions(Site site) {
        double[] positions = new double[size()];
        var random = new Well19937c(seed ^ ((long) site.name().hashCode() << 32));
        for (int d = 0; d < positions.length; d++) {
            double shift = seed == 0 ? 0 : random.nextGaussian() * site.plusMinus();
            positions[d] = site.position() + shift;
        }
        return positions;
    }
}
