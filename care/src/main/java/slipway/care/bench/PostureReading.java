package slipway.app.nerve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;
import slipway.mechanics.pathway.TractProfile;
import slipway.reasoning.basis.Coefficients;

/**
 * What the nerve model says about one posture against another.
 *
 * @param posture the posture asked for
 * @param from the posture that it is compared with
 * @param tract the pathway
 * @param sites values at every named site of the tract, from proximal to distal
 * @param meanPositiveStrainPct mean of the positive strain along the tract, above {@code from}
 * @param notModelled joints of the posture that the model leaves out
 */
record PostureReading(
        Posture posture,
        Posture from,
        Tract tract,
        List<AtSite> sites,
        Spread meanPositiveStrainPct,
        List<String> notModelled) {
    private static final Coefficients DATA = Coefficients.load("posture.csv");

    /** Median and 90 % interval over the draws. */
    record Spread(double median, double low, double high) {
        static Spread of(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            return new Spread(at(sorted, 0.5), at(sorted, 0.05), at(sorted, 0.95));
        }

        /** Less than half of the last digit that is shown. */
        private static final double SHOWN_AS_ZERO = 0.05;

        /** Whether the draws do not agree on the sign: zero lies within the interval, with more than zero on both sides. */
        boolean signUnsure() {
            return low < -SHOWN_AS_ZERO && high > SHOWN_AS_ZERO;
        }

        private static double at(double[] sorted, double share) {
            return sorted[(int) Math.round(share * (sorted.length - 1))];
        }
    }

    /**
     * Values at one site.
     *
     * @param strainPct strain above {@code from}, %
     * @param glideMm slide from {@code from}, mm, distal positive
     * @param relativeTension tension above the reference posture, relative to the stiffness of the sciatic nerve
     * @param loadPct load above {@code from}: strain at the site mixed with the mean positive strain of the tract
     */
    record AtSite(String site, Spread strainPct, Spread glideMm, double relativeTension, Spread loadPct) {}

    /** Share of the mean positive strain in the load that is shown. */
    static double spreadShown() {
        return DATA.value("spread-shown");
    }

    static PostureReading of(Posture posture, Posture from, Tract tract, Person person) {
        var model = new PathwayModel(person, FittedParameters.bundled().standardDraws());
        List<PostureResponse> answers = model.respondAlong(List.of(from, posture));
        PostureResponse start = answers.get(0);
        PostureResponse end = answers.get(1);
        TractProfile profile = model.profile(posture, tract);
        double[] mean = difference(end.meanPositiveStrain(tract), start.meanPositiveStrain(tract), 100);
        var sites = new ArrayList<AtSite>();
        for (Site site : Site.all().values()) {
            if (onTract(site, tract)) {
                double[] strain = difference(end.strainAt(site), start.strainAt(site), 100);
                sites.add(new AtSite(
                        site.name(),
                        Spread.of(strain),
                        Spread.of(difference(end.glideMmAt(site), start.glideMmAt(site), 1)),
                        profile.relativeTensionAt(model.arcM(site)),
                        Spread.of(mixed(strain, mean))));
            }
        }
        return new PostureReading(
                posture, from, tract, List.copyOf(sites), Spread.of(mean), PathwayModel.notModelled(posture));
    }

    /** Whether a site lies on the way of a tract: on the trunk that all share, or on its own end. */
    static boolean onTract(Site site, Tract tract) {
        boolean shared = site.tract() == Tract.SCIATIC_TIBIAL
                && switch (site.segment()) {
                    case CORD, CANAL, PELVIS -> true;
                    case THIGH -> site.position() < 0.8;
                    default -> false;
                };
        boolean fibular =
                tract == Tract.SCIATIC_SUPERFICIAL_FIBULAR && site.name().equals("fibular neck");
        return shared || fibular || site.tract() == tract;
    }

    static double[] difference(double[] end, double[] start, double factor) {
        double[] difference = new double[end.length];
        for (int d = 0; d < difference.length; d++) {
            difference[d] = factor * (end[d] - start[d]);
        }
        return difference;
    }

    static double[] mixed(double[] local, double[] mean) {
        double spread = spreadShown();
        double[] mixed = new double[local.length];
        for (int d = 0; d < mixed.length; d++) {
            mixed[d] = (1 - spread) * local[d] + spread * mean[d];
        }
        return mixed;
    }
}
