package slipway.mechanics.calibration.study;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.NerveModel;

/** The answers that a plan for a leg rests on most. */
public enum KeyOutput {
    GLIDE("glide, raise to 60°", "mm"),
    STRAIN("strain, raise to 60°", "%"),
    MEAN_STRAIN("mean positive strain, raise to 60°", "%"),
    SHIFT_BY_STRAIN("dorsiflexion shift, by strain", "deg"),
    SHIFT_BY_MEAN_STRAIN("dorsiflexion shift, by mean strain", "deg"),
    SITTING_BY_STRAIN("sitting as a raise, by strain", "deg"),
    SITTING_BY_MEAN_STRAIN("sitting as a raise, by mean strain", "deg");

    private static final Posture RAISED = Posture.parse("hip 60");

    private final String label;
    private final String unit;

    KeyOutput(String label, String unit) {
        this.label = label;
        this.unit = unit;
    }

    /** What it is, in words. */
    public String label() {
        return label;
    }

    /** Its unit. */
    public String unit() {
        return unit;
    }

    /** All of them at the deep gluteal space, one value per draw. */
    public static Map<KeyOutput, double[]> of(NerveModel model) {
        var raised = model.respond(RAISED);
        var facts = new LoadFacts(model);
        var outputs = new EnumMap<KeyOutput, double[]>(KeyOutput.class);
        outputs.put(GLIDE, raised.glideMmAt(LoadFacts.SITE));
        outputs.put(STRAIN, percent(raised.strainAt(LoadFacts.SITE)));
        outputs.put(MEAN_STRAIN, percent(raised.meanPositiveStrain(LoadFacts.SITE.tract())));
        outputs.put(SHIFT_BY_STRAIN, facts.raiseShiftDeg(0));
        outputs.put(SHIFT_BY_MEAN_STRAIN, facts.raiseShiftDeg(1));
        outputs.put(SITTING_BY_STRAIN, facts.sittingAsRaiseDeg(0));
        outputs.put(SITTING_BY_MEAN_STRAIN, facts.sittingAsRaiseDeg(1));
        return outputs;
    }

    private static double[] percent(double[] fraction) {
        return Arrays.stream(fraction).map(f -> 100 * f).toArray();
    }
}
