package slipway.mechanics.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import slipway.mechanics.pathway.PathwayModel;

/**
 * What the model says about one row, over all draws.
 *
 * @param row the row
 * @param median median over the draws, in the unit of the row; NaN for an order row
 * @param low 5th percentile
 * @param high 95th percentile
 * @param sd standard deviation over the draws
 * @param holds share of draws in which the relation of an order row holds; empty otherwise
 */
public record Prediction(EvidenceRow row, double median, double low, double high, double sd, OptionalDouble holds) {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    /** Predictions of all rows, in their order. */
    public static List<Prediction> of(PathwayModel model, List<EvidenceRow> rows) {
        Map<String, double[]> values = RowPredictor.predict(model, rows);
        var predictions = new ArrayList<Prediction>();
        for (EvidenceRow row : rows) {
            predictions.add(
                    row.quantity() == Quantity.ORDER
                            ? order(row, values, model.draws())
                            : measured(row, Calibration.values(values, row)));
        }
        return predictions;
    }

    private static Prediction order(EvidenceRow row, Map<String, double[]> values, int draws) {
        double share = OrderRelation.parse(row.relation()).orElseThrow().share(values, draws);
        return new Prediction(row, Double.NaN, Double.NaN, Double.NaN, Double.NaN, OptionalDouble.of(share));
    }

    private static Prediction measured(EvidenceRow row, double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double mean = Arrays.stream(sorted).average().orElseThrow();
        double variance =
                Arrays.stream(sorted).map(v -> (v - mean) * (v - mean)).sum() / Math.max(1, sorted.length - 1);
        return new Prediction(
                row,
                quantile(sorted, 0.5),
                quantile(sorted, LOW),
                quantile(sorted, HIGH),
                Math.sqrt(variance),
                OptionalDouble.empty());
    }

    /** Quantile of sorted values, linear between neighbours. */
    static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int below = (int) Math.floor(at);
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }

    /** Predicted median minus published mean, in published standard deviations; empty without both. */
    public OptionalDouble z() {
        var published = row.published();
        if (Double.isNaN(median) || published.mean().isEmpty() || published.sd().isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                (median - published.mean().getAsDouble()) / published.sd().getAsDouble());
    }
}
