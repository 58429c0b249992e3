package slipway.mechanics.calibration;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;
import slipway.mechanics.parameters.ModelParameter;
import slipway.mechanics.parameters.Prior;

/**
 * A form of the nerve model: some parameters pinned, the couplings of the regions tied or each its own.
 *
 * @param name short name
 * @param description what is different from the form that the program uses
 * @param pinned values that are not fitted, on the natural scale
 * @param oneCoupling whether all regions outside the dura share one coupling
 */
public record ModelForm(String name, String description, Map<ModelParameter, Double> pinned, boolean oneCoupling) {
    /** Spread of a pinned parameter on its free scale: as good as none, and well above rounding. */
    private static final double PINNED_SD = 1e-4;

    /** As good as none: a thousandth of what the tissue along a tenth of a metre holds. */
    private static final Map<ModelParameter, Double> NO_TETHER = Map.of(ModelParameter.NOTCH_TETHER, 0.0001);

    private static final List<ModelParameter> REGIONS = List.of(
            ModelParameter.COUPLING_PELVIS,
            ModelParameter.COUPLING_THIGH,
            ModelParameter.COUPLING_SHANK,
            ModelParameter.COUPLING_FOOT);

    /** The form that the program uses: chosen by leave-one-study-out, see docs/decisions/0004-cable-model.md. */
    public static final ModelForm USED =
            new ModelForm("used", "one hold of the bed outside the dura, and a tether at the notch", Map.of(), true);

    /** The forms that are compared in docs/validation.md, the one that the program uses first. */
    public static List<ModelForm> compared() {
        return List.of(
                USED,
                new ModelForm(
                        "held by region", "pelvis, thigh, shank and foot each hold in their own way", Map.of(), false),
                new ModelForm(
                        "by region, no tether",
                        "as before, and nothing but the tissue along the way holds the nerve in the pelvis",
                        NO_TETHER,
                        false),
                tied("no tether", "nothing but the tissue along the way holds the nerve in the pelvis", NO_TETHER),
                tied(
                        "held ends",
                        "distal ends fastened instead of nearly free",
                        Map.of(ModelParameter.END_SPRING, 5.0)),
                tied("no taper", "thin branches as stiff as the trunk", Map.of(ModelParameter.TAPER, 0.001)),
                tied("linear", "no slack: tension in proportion to strain", Map.of(ModelParameter.SLACK_SLOPE, 0.999)),
                tied("stiff roots", "roots as stiff as the nerve", Map.of(ModelParameter.ROOT_STIFFNESS, 1.0)),
                tied("fixed zones", "joint zones as wide as in geometry.csv", fixedZones()));
    }

    private static ModelForm tied(String name, String description, Map<ModelParameter, Double> pinned) {
        return new ModelForm(name, description, pinned, true);
    }

    private static Map<ModelParameter, Double> fixedZones() {
        var zones = new EnumMap<ModelParameter, Double>(ModelParameter.class);
        zones.put(ModelParameter.HIP_ZONE, 1.0);
        zones.put(ModelParameter.KNEE_ZONE, 1.0);
        zones.put(ModelParameter.ANKLE_ZONE, 1.0);
        return Map.copyOf(zones);
    }

    /** Prior medians on the free scale, by ordinal. */
    double[] mean() {
        return Prior.all().stream()
                .mapToDouble(prior -> prior.scale().toFree(pinned.getOrDefault(prior.parameter(), prior.median())))
                .toArray();
    }

    /** Prior covariance on the free scale. */
    RealMatrix covariance() {
        List<Prior> priors = Prior.all();
        RealMatrix covariance = new Array2DRowRealMatrix(priors.size(), priors.size());
        for (int i = 0; i < priors.size(); i++) {
            Prior prior = priors.get(i);
            boolean tied = oneCoupling && REGIONS.contains(prior.parameter());
            double own = tied || pinned.containsKey(prior.parameter()) ? PINNED_SD : prior.sd();
            covariance.setEntry(i, i, own * own);
        }
        if (oneCoupling) {
            shareCoupling(covariance);
        }
        return covariance;
    }

    private static void shareCoupling(RealMatrix covariance) {
        for (ModelParameter one : REGIONS) {
            for (ModelParameter other : REGIONS) {
                double shared = Prior.of(one).sd() * Prior.of(other).sd();
                covariance.addToEntry(one.ordinal(), other.ordinal(), shared);
            }
        }
    }
}
