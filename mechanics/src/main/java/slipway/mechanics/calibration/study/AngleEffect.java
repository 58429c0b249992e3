package slipway.mechanics.calibration.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Person;
import slipway.mechanics.calibration.EvidenceRow;
import slipway.mechanics.calibration.Quantity;
import slipway.mechanics.calibration.RowPredictor;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.ParameterVector;
import slipway.mechanics.pathway.PathwayModel;

/**
 * What an assumed angle does to the prediction of its row and, through the fit, to the key outputs.
 *
 * @param row the row
 * @param joint whose angle was assumed
 * @param end held, start or finish
 * @param byDeg by how much it was moved: the one of the two directions that changes more
 * @param change change of the prediction for the average person, in the unit of the row
 * @param outputs change of the key outputs after a refit, to first order; all 0 for rows that are not fitted
 */
public record AngleEffect(
        EvidenceRow row, Joint joint, String end, double byDeg, double change, Map<KeyOutput, Double> outputs) {
    /** By how much an angle that the source does not state may be off: assumption. */
    public static final double STEP_DEG = 10;

    /** Change of the prediction in published standard deviations between people. */
    public double changeInSd() {
        return change / row.published().sd().orElseThrow();
    }

    /** The effects of every assumed angle of the rows that have a published mean and sd. */
    static List<AngleEffect> of(List<EvidenceRow> table, ParameterVector average, LinearRefit refit) {
        List<EvidenceRow> rows = table.stream()
                .filter(row -> row.quantity() != Quantity.ORDER)
                .filter(row -> row.published().mean().isPresent()
                        && row.published().sd().isPresent())
                .toList();
        List<AssumedAngle> angles = AssumedAngle.list(rows);
        var asked = new ArrayList<>(rows);
        for (AssumedAngle angle : angles) {
            for (double byDeg : List.of(STEP_DEG, -STEP_DEG)) {
                angle.moved(id(angle, byDeg), byDeg).ifPresent(asked::add);
            }
        }
        Map<String, double[]> values =
                RowPredictor.predict(new PathwayModel(Person.STANDARD, DrawSet.single(average)), asked);
        return angles.stream()
                .flatMap(angle -> larger(angle, values, refit).stream())
                .toList();
    }

    private static Optional<AngleEffect> larger(AssumedAngle angle, Map<String, double[]> values, LinearRefit refit) {
        Optional<AngleEffect> up = effect(angle, STEP_DEG, values, refit);
        Optional<AngleEffect> down = effect(angle, -STEP_DEG, values, refit);
        if (up.isEmpty() || down.isEmpty()) {
            return up.or(() -> down);
        }
        return Math.abs(up.get().change) >= Math.abs(down.get().change) ? up : down;
    }

    private static Optional<AngleEffect> effect(
            AssumedAngle angle, double byDeg, Map<String, double[]> values, LinearRefit refit) {
        double[] moved = values.get(id(angle, byDeg));
        double[] kept = values.get(angle.row().id());
        if (moved == null || kept == null) {
            return Optional.empty();
        }
        double change = moved[0] - kept[0];
        return Optional.of(new AngleEffect(
                angle.row(),
                angle.joint(),
                angle.end().name().toLowerCase(Locale.ROOT),
                byDeg,
                change,
                refit.ofRow(angle.row(), change)));
    }

    private static String id(AssumedAngle angle, double byDeg) {
        return angle.row().id() + '|' + angle.joint() + '|' + angle.end() + '|' + byDeg;
    }
}
