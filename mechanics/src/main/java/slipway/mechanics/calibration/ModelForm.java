package slipway.mechanics.calibration;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.ModelParameter;
import slipway.mechanics.parameters.Prior;
import slipway.mechanics.pathway.MuscleBed;
import slipway.mechanics.pathway.PathwayModel;

/**
 * A form of the nerve model: some parameters pinned, some priors wider, the couplings of the regions tied or each its own,
 * and what the nerve lies in.
 *
 * @param name short name
 * @param description what is different from the form that the program uses
 * @param pinned values that are not fitted, on the natural scale
 * @param wider factors on the sd of priors
 * @param oneCoupling whether all regions outside the dura share one coupling
 * @param bed muscles that are the bed of the nerve
 */
public record ModelForm(
        String name,
        String description,
        Map<ModelParameter, Double> pinned,
        Map<ModelParameter, Double> wider,
        boolean oneCoupling,
        MuscleBed bed) {
    /** Spread of a pinned parameter on its free scale: as good as none, and well above rounding. */
    private static final double PINNED_SD = 1e-4;

    /** As good as none: a thousandth of what the tissue along a tenth of a metre holds. */
    private static final Map<ModelParameter, Double> NO_TETHER = Map.of(ModelParameter.NOTCH_TETHER, 0.0001);

    private static final List<ModelParameter> REGIONS = List.of(
            ModelParameter.COUPLING_PELVIS,
            ModelParameter.COUPLING_THIGH,
            ModelParameter.COUPLING_SHANK,
            ModelParameter.COUPLING_FOOT);

    private static final List<ModelParameter> TOE =
            List.of(ModelParameter.TOE_MIDPOINT, ModelParameter.TOE_WIDTH, ModelParameter.SLACK_SLOPE);

    /** The form that the program uses: chosen by leave-one-study-out, see docs/decisions/0004-cable-model.md. */
    public static final ModelForm USED = tied(
            "used",
            "one hold of the bed outside the dura, a tether at the notch, and the calf as bed of the tibial and sural nerve",
            Map.of());

    /** The forms that are compared in docs/validation.md, the one that the program uses first. */
    public static List<ModelForm> compared() {
        return List.of(
                USED,
                byRegion("held by region", "pelvis, thigh, shank and foot each hold in their own way", Map.of()),
                byRegion(
                        "by region, no tether",
                        "as before, and nothing but the tissue along the way holds the nerve in the pelvis",
                        NO_TETHER),
                tied("no tether", "nothing but the tissue along the way holds the nerve in the pelvis", NO_TETHER),
                tied(
                        "held ends",
                        "distal ends fastened instead of nearly free",
                        Map.of(ModelParameter.END_SPRING, 5.0)),
                tied("no taper", "thin branches as stiff as the trunk", Map.of(ModelParameter.TAPER, 0.001)),
                tied("linear", "no slack: tension in proportion to strain", Map.of(ModelParameter.SLACK_SLOPE, 0.999)),
                tied("stiff roots", "roots as stiff as the nerve", Map.of(ModelParameter.ROOT_STIFFNESS, 1.0)),
                tied("fixed zones", "joint zones as wide as in geometry.csv", fixedZones()),
                tied(
                        "slack carries nothing",
                        "the slack nerve has next to no stiffness",
                        Map.of(ModelParameter.SLACK_SLOPE, 0.01)),
                wider("wide hold", "prior of the hold twice as wide", REGIONS),
                wider("wide toe", "priors of slack and its width twice as wide", TOE),
                wider("wide tether", "prior of the tether twice as wide", List.of(ModelParameter.NOTCH_TETHER)),
                on(MuscleBed.NONE, "at the joint alone", "no muscle: the ankle lengthens the bed at the ankle alone"),
                on("soleus", "the soleus instead of the calf"),
                on("shank", "the muscles at the front of the shank too"),
                on("calf over the knee", "the knee lengthens the calf too"),
                on("thigh and shank", "hip, knee and ankle lengthen the muscles of the thigh and the shank"));
    }

    private static ModelForm tied(String name, String description, Map<ModelParameter, Double> pinned) {
        return new ModelForm(name, description, pinned, Map.of(), true, MuscleBed.USED);
    }

    private static ModelForm byRegion(String name, String description, Map<ModelParameter, Double> pinned) {
        return new ModelForm(name, description, pinned, Map.of(), false, MuscleBed.USED);
    }

    private static ModelForm wider(String name, String description, List<ModelParameter> parameters) {
        var wider = new EnumMap<ModelParameter, Double>(ModelParameter.class);
        parameters.forEach(parameter -> wider.put(parameter, 2.0));
        return new ModelForm(name, description, Map.of(), Map.copyOf(wider), true, MuscleBed.USED);
    }

    private static ModelForm on(String bed, String description) {
        return on(MuscleBed.get(bed), bed, description);
    }

    private static ModelForm on(MuscleBed bed, String name, String description) {
        return new ModelForm(name, description, Map.of(), Map.of(), true, bed);
    }

    private static Map<ModelParameter, Double> fixedZones() {
        var zones = new EnumMap<ModelParameter, Double>(ModelParameter.class);
        zones.put(ModelParameter.HIP_ZONE, 1.0);
        zones.put(ModelParameter.KNEE_ZONE, 1.0);
        zones.put(ModelParameter.ANKLE_ZONE, 1.0);
        return Map.copyOf(zones);
    }

    /** The model of the standard person in this form, with the named sites. */
    public PathwayModel model(DrawSet draws) {
        return PathwayModel.on(bed, draws, Site.all().values());
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
            double factor = wider.getOrDefault(prior.parameter(), 1.0);
            double own = factor * (tied || pinned.containsKey(prior.parameter()) ? PINNED_SD : prior.sd());
            covariance.setEntry(i, i, own * own);
        }
        if (oneCoupling) {
            shareCoupling(covariance);
        }
        return covariance;
    }

    private void shareCoupling(RealMatrix covariance) {
        for (ModelParameter one : REGIONS) {
            for (ModelParameter other : REGIONS) {
                double factor = wider.getOrDefault(one, 1.0) * wider.getOrDefault(other, 1.0);
                double shared = factor * Prior.of(one).sd() * Prior.of(other).sd();
                covariance.addToEntry(one.ordinal(), other.ordinal(), shared);
            }
        }
    }
}
