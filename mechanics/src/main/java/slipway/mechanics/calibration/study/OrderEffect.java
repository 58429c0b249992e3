package slipway.mechanics.calibration.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import slipway.mechanics.body.Joint;
import slipway.mechanics.calibration.EvidenceRow;
import slipway.mechanics.calibration.Prediction;
import slipway.mechanics.calibration.Quantity;
import slipway.mechanics.pathway.PathwayModel;

/**
 * What an assumed angle does to an order row: it is moved in every part of the row in which the joint is bent.
 *
 * @param row the order row
 * @param joint whose angle was assumed
 * @param byDeg by how much it was moved
 * @param holds share of draws in which the relation then holds
 */
public record OrderEffect(EvidenceRow row, Joint joint, double byDeg, double holds) {

    /** The effects of every assumed angle of every order row. */
    static List<OrderEffect> of(PathwayModel model, List<EvidenceRow> table) {
        var effects = new ArrayList<OrderEffect>();
        for (EvidenceRow order : table) {
            if (order.quantity() == Quantity.ORDER) {
                List<EvidenceRow> parts = parts(order, table);
                List<Joint> joints = parts.stream()
                        .flatMap(part -> AssumedAngle.joints(part).stream())
                        .distinct()
                        .toList();
                for (Joint joint : joints) {
                    for (double byDeg : List.of(-AngleEffect.STEP_DEG, AngleEffect.STEP_DEG)) {
                        effects.add(new OrderEffect(order, joint, byDeg, holds(model, order, parts, joint, byDeg)));
                    }
                }
            }
        }
        return effects;
    }

    private static List<EvidenceRow> parts(EvidenceRow order, List<EvidenceRow> table) {
        List<String> words = List.of(order.relation().split("[\\s;<>]+"));
        return table.stream().filter(row -> words.contains(row.id())).toList();
    }

    private static double holds(
            PathwayModel model, EvidenceRow order, List<EvidenceRow> parts, Joint joint, double byDeg) {
        List<EvidenceRow> moved =
                parts.stream().map(part -> moved(part, joint, byDeg)).toList();
        return Prediction.of(
                        model, Stream.concat(moved.stream(), Stream.of(order)).toList())
                .stream()
                .flatMapToDouble(p -> p.holds().stream())
                .findFirst()
                .orElseThrow();
    }

    private static EvidenceRow moved(EvidenceRow part, Joint joint, double byDeg) {
        EvidenceRow row = part;
        for (var end : List.of(AssumedAngle.End.START, AssumedAngle.End.FINISH)) {
            var posture = end == AssumedAngle.End.START
                    ? part.motion().from()
                    : part.motion().to();
            if (posture.angleDeg(joint) != 0) {
                row = new AssumedAngle(row, joint, end).moved(part.id(), byDeg).orElseThrow();
            }
        }
        return row;
    }
}
