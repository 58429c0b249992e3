package slipway.mechanics.pathway;

import java.util.Arrays;

/**
 * Values along one tract from the brainstem to its end, as medians over the draws.
 *
 * @param arcM arc length of each point, m
 * @param strainPct strain, % of the length in the reference posture
 * @param glideMm slide against the bed, mm, distal positive
 * @param relativeTension tension above the reference, relative to the axial stiffness of the sciatic nerve at mid-thigh
 * @param rootSlideMm slide of the brainstem end, mm
 * @param endSlideMm slide of the distal end, mm
 */
public record TractProfile(
        double[] arcM,
        double[] strainPct,
        double[] glideMm,
        double[] relativeTension,
        double rootSlideMm,
        double endSlideMm) {

    /** Length of the pathway, m. */
    public double lengthM() {
        int last = arcM.length - 1;
        // Points are middles of cells: the end lies half of the last cell further.
        return last == 0 ? 2 * arcM[0] : arcM[last] + 0.5 * (arcM[last] - arcM[last - 1]);
    }

    /** Relative tension at an arc length, linear between points; that of the nearest end outside. */
    public double relativeTensionAt(double arc) {
        int above = 1;
        while (above < arcM.length - 1 && arcM[above] < arc) {
            above++;
        }
        double t = (arc - arcM[above - 1]) / (arcM[above] - arcM[above - 1]);
        t = Math.max(0, Math.min(1, t));
        return relativeTension[above - 1] * (1 - t) + relativeTension[above] * t;
    }

    /** Gathers the lanes of all blocks. */
    static final class Collector {
        private final NervePath path;
        private final double[][] strain;
        private final double[][] glide;
        private final double[][] tension;
        private final double[][] ends;

        Collector(NervePath path, int draws) {
            this.path = path;
            int cells = path.nodes().length - 1;
            strain = new double[cells][draws];
            glide = new double[cells][draws];
            tension = new double[cells][draws];
            ends = new double[2][draws];
        }

        void add(LaneBlock block, int firstDraw) {
            int end = path.nodes()[path.nodes().length - 1];
            for (int l = 0; l < block.lanes(); l++) {
                ends[0][firstDraw + l] = 1000 * block.slideM()[0][l];
                ends[1][firstDraw + l] = 1000 * block.slideM()[end][l];
            }
            for (int cell = 0; cell < strain.length; cell++) {
                int node = path.nodes()[cell + 1];
                int above = path.nodes()[cell];
                for (int l = 0; l < block.lanes(); l++) {
                    strain[cell][firstDraw + l] = 100 * block.strain()[node][l];
                    glide[cell][firstDraw + l] = 500 * (block.slideM()[node][l] + block.slideM()[above][l]);
                    tension[cell][firstDraw + l] = block.relativeTension(node, l);
                }
            }
        }

        TractProfile finish() {
            double[] arcs = new double[strain.length];
            for (int cell = 0; cell < arcs.length; cell++) {
                arcs[cell] = 0.5 * (path.arcM()[cell] + path.arcM()[cell + 1]);
            }
            return new TractProfile(
                    arcs, medians(strain), medians(glide), medians(tension), median(ends[0]), median(ends[1]));
        }

        private static double[] medians(double[][] rows) {
            return Arrays.stream(rows).mapToDouble(Collector::median).toArray();
        }

        private static double median(double[] row) {
            Arrays.sort(row);
            int half = row.length / 2;
            return row.length % 2 == 1 ? row[half] : 0.5 * (row[half - 1] + row[half]);
        }
    }
}
