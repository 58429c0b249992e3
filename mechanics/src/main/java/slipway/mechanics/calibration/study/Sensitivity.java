package slipway.mechanics.calibration.study;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import slipway.mechanics.parameters.ModelParameter;

/**
 * How the answers hang on what was assumed.
 *
 * @param ofPriors change of the key outputs when the median of a prior lies one prior sd higher, after a refit to
 *     first order
 * @param ofAngles what the assumed angles of measured rows do
 * @param ofOrders what the assumed angles of order rows do
 */
public record Sensitivity(
        Map<ModelParameter, Map<KeyOutput, Double>> ofPriors, List<AngleEffect> ofAngles, List<OrderEffect> ofOrders) {
    public Sensitivity {
        ofPriors = Map.copyOf(ofPriors);
        ofAngles = List.copyOf(ofAngles);
        ofOrders = List.copyOf(ofOrders);
    }

    static Map<ModelParameter, Map<KeyOutput, Double>> ofPriors(LinearRefit refit) {
        var effects = new EnumMap<ModelParameter, Map<KeyOutput, Double>>(ModelParameter.class);
        for (ModelParameter parameter : ModelParameter.values()) {
            effects.put(parameter, refit.ofPrior(parameter));
        }
        return effects;
    }
}
