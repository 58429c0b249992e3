package slipway.mechanics.calibration.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.evidence.BundledTable;
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;

/**
 * What the load at the deep gluteal space says about two facts of practice ({@code load-facts.csv}), in every draw:
 * by how many degrees of hip flexion dorsiflexion shifts the limit of a raised leg, and which raise of the straight leg
 * loads the nerve as sitting on a chair does. Load is (1 − spread) × strain at the site + spread × mean positive strain
 * along the tract.
 */
public final class LoadFacts {
    /** The site of the facts: where the raised leg is felt first, and where the plan of most people aims. */
    public static final Site SITE = Site.get("deep gluteal space");

    /** Between the steps the load is taken as linear: within 0.1 deg of a raise in steps of 2.5 deg. */
    private static final double RAISE_STEP_DEG = 5;

    private static final Map<String, Double> FACTS = BundledTable.read("load-facts.csv").stream()
            .collect(Collectors.toUnmodifiableMap(row -> row.get("fact"), row -> Double.parseDouble(row.get("value"))));

    private final double[] raiseDeg;
    private final List<PostureResponse> raises;
    private final PostureResponse plantarflexed;
    private final PostureResponse sitting;
    private final int draws;

    /** Asks the model for a raise of the straight leg, the raise with the ankle plantarflexed, and sitting. */
    public LoadFacts(NerveModel model) {
        draws = model.draws();
        raiseDeg = raises();
        var postures = new ArrayList<Posture>();
        for (double hip : raiseDeg) {
            postures.add(Posture.reference().with(Joint.HIP, hip));
        }
        postures.add(Posture.reference()
                .with(Joint.HIP, fact("raise-limit-plantarflexed"))
                .with(Joint.ANKLE, fact("plantarflexed-ankle")));
        postures.add(Position.get("sitting").posture());
        List<PostureResponse> answers = model.respondAlong(postures);
        raises = answers.subList(0, raiseDeg.length);
        plantarflexed = answers.get(raiseDeg.length);
        sitting = answers.get(raiseDeg.length + 1);
    }

    private static double[] raises() {
        int steps = (int) Math.floor((Joint.HIP.highDeg() - Joint.HIP.lowDeg()) / RAISE_STEP_DEG);
        double[] raises = new double[steps + 1];
        Arrays.setAll(raises, i -> Joint.HIP.lowDeg() + i * RAISE_STEP_DEG);
        return raises;
    }

    /** A number of {@code load-facts.csv}. */
    public static double fact(String name) {
        Double value = FACTS.get(name);
        if (value == null) {
            throw new IllegalArgumentException("load-facts.csv has no " + name);
        }
        return value;
    }

    /**
     * Shift of the limit of the raise when the plantarflexed ankle goes to neutral, deg of hip flexion, negative when
     * the limit comes earlier; one value per draw.
     *
     * @param spread share of the mean positive strain in the load, 0 to 1
     */
    public double[] raiseShiftDeg(double spread) {
        double[] raise = raiseWithTheLoadOf(plantarflexed, spread);
        for (int d = 0; d < draws; d++) {
            raise[d] -= fact("raise-limit-plantarflexed");
        }
        return raise;
    }

    /** Hip flexion of the raise with straight knee and neutral ankle that loads the nerve as sitting does, deg. */
    public double[] sittingAsRaiseDeg(double spread) {
        return raiseWithTheLoadOf(sitting, spread);
    }

    /** First raise whose load reaches that of an answer, linear between the steps, held within the range of the hip. */
    private double[] raiseWithTheLoadOf(PostureResponse answer, double spread) {
        double[] target = load(answer, spread);
        double[] found = new double[draws];
        Arrays.fill(found, raiseDeg[raiseDeg.length - 1]);
        double[] below = load(raises.get(0), spread);
        boolean[] done = new boolean[draws];
        for (int i = 1; i < raiseDeg.length; i++) {
            double[] here = load(raises.get(i), spread);
            for (int d = 0; d < draws; d++) {
                if (!done[d] && here[d] >= target[d]) {
                    double share = here[d] > below[d] ? (target[d] - below[d]) / (here[d] - below[d]) : 1;
                    found[d] = raiseDeg[i - 1] + RAISE_STEP_DEG * Math.max(0, share);
                    done[d] = true;
                }
            }
            below = here;
        }
        return found;
    }

    private double[] load(PostureResponse answer, double spread) {
        if (!(spread >= 0 && spread <= 1)) {
            throw new IllegalArgumentException("spread must be within 0 and 1, was " + spread);
        }
        double[] load = answer.strainAt(SITE);
        double[] mean = answer.meanPositiveStrain(SITE.tract());
        for (int d = 0; d < draws; d++) {
            load[d] = (1 - spread) * load[d] + spread * mean[d];
        }
        return load;
    }
}
