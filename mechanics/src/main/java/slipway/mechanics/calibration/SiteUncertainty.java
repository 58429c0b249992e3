package slipway.mechanics.calibration;

import java.util.List;
import java.util.Map;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.ParameterVector;
import slipway.mechanics.pathway.MuscleBed;
import slipway.mechanics.pathway.PathwayModel;

/** How much the uncertain place of each row's site moves its prediction. */
final class SiteUncertainty {
    private final List<EvidenceRow> rows;
    private final MuscleBed bed;

    SiteUncertainty(List<EvidenceRow> rows, MuscleBed bed) {
        this.rows = rows;
        this.bed = bed;
    }

    /** Standard deviation of each row's prediction through the place of its site, in the unit of the row. */
    double[] sd(ParameterVector parameters) {
        Map<String, double[]> proximal = predict(parameters, -1);
        Map<String, double[]> distal = predict(parameters, 1);
        double[] sd = new double[rows.size()];
        for (int i = 0; i < sd.length; i++) {
            EvidenceRow row = rows.get(i);
            sd[i] = 0.5 * Math.abs(Calibration.values(distal, row)[0] - Calibration.values(proximal, row)[0]);
        }
        return sd;
    }

    private Map<String, double[]> predict(ParameterVector parameters, int sign) {
        List<EvidenceRow> moved = rows.stream().map(row -> moved(row, sign)).toList();
        List<Site> sites =
                moved.stream().flatMap(row -> row.site().stream()).distinct().toList();
        return RowPredictor.predict(PathwayModel.on(bed, DrawSet.single(parameters), sites), moved);
    }

    private static EvidenceRow moved(EvidenceRow row, int sign) {
        return new EvidenceRow(
                row.id(),
                row.use(),
                row.study(),
                row.site().map(site -> site.moved(sign)),
                row.motion(),
                row.quantity(),
                row.relation(),
                row.published());
    }
}
