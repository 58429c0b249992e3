package slipway.mechanics.calibration;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.pathway.PathwayModel;

/** What the model says about rows of measurements, in every draw. */
public final class RowPredictor {
    private RowPredictor() {}

    /**
     * Values of every row but the order rows, by id; one value per draw in the unit of the row.
     *
     * <p>Cost: one posture solve for each different posture of the rows.
     */
    public static Map<String, double[]> predict(PathwayModel model, List<EvidenceRow> rows) {
        var postures = new LinkedHashSet<Posture>();
        for (EvidenceRow row : rows) {
            postures.add(row.motion().from());
            postures.add(row.motion().to());
        }
        List<Posture> order = new ArrayList<>(postures);
        List<PostureResponse> answers = model.respondAlong(order);
        var byPosture = new LinkedHashMap<Posture, PostureResponse>();
        for (int i = 0; i < order.size(); i++) {
            byPosture.put(order.get(i), answers.get(i));
        }
        var values = new LinkedHashMap<String, double[]>();
        for (EvidenceRow row : rows) {
            if (row.quantity() != Quantity.ORDER) {
                values.put(row.id(), values(model, row, byPosture));
            }
        }
        return values;
    }

    private static double[] values(PathwayModel model, EvidenceRow row, Map<Posture, PostureResponse> byPosture) {
        Posture from = row.motion().from();
        Posture to = row.motion().to();
        if (row.quantity() == Quantity.BED_ELONGATION) {
            return difference(
                    model.bedElongationMm(to, Tract.SCIATIC_TIBIAL),
                    model.bedElongationMm(from, Tract.SCIATIC_TIBIAL),
                    1);
        }
        PostureResponse start = answer(byPosture, from);
        PostureResponse end = answer(byPosture, to);
        Site site = row.site().orElseThrow();
        return switch (row.quantity()) {
            case EXCURSION -> difference(end.glideMmAt(site), start.glideMmAt(site), 1);
            case STRAIN -> difference(end.strainAt(site), start.strainAt(site), 100);
            default -> difference(end.strainAt(site), new double[model.draws()], 100);
        };
    }

    private static PostureResponse answer(Map<Posture, PostureResponse> byPosture, Posture posture) {
        PostureResponse answer = byPosture.get(posture);
        if (answer == null) {
            throw new IllegalStateException("posture was not solved: " + posture);
        }
        return answer;
    }

    private static double[] difference(double[] end, double[] start, double factor) {
        double[] difference = new double[end.length];
        for (int d = 0; d < difference.length; d++) {
            difference[d] = factor * (end[d] - start[d]);
        }
        return difference;
    }
}
