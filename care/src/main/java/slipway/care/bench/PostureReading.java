package slipway.care.bench;

import java.util.ArrayList;
import java.util.List;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.pathway.PathwayModel;
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
public record PostureReading(
        Posture posture,
        Posture from,
        Tract tract,
        List<AtSite> sites,
        Spread meanPositiveStrainPct,
        List<String> notModelled) {
    private static final Coefficients DATA = Coefficients.load("posture.csv");

    /**
     * Values at one site.
     *
     * @param strainPct strain above {@code from}, %
     * @param glideMm slide from {@code from}, mm, distal positive
     * @param relativeTension tension above the reference posture, relative to the stiffness of the sciatic nerve
     * @param loadPct load above {@code from}: strain at the site mixed with the mean positive strain of the tract
     */
    public record AtSite(String site, Spread strainPct, Spread glideMm, double relativeTension, Spread loadPct) {}

    /** Share of the mean positive strain in the load that is shown. */
    public static double spreadShown() {
        return DATA.value("spread-shown");
    }

    /** Whether published measurements stand behind the model of this pathway; if not, whoever reads it must be told. */
    public boolean validated() {
        return tract.pathway().validated();
    }

    /** The reading of a body; differences are taken draw by draw, so that what both postures share cancels. */
    public static PostureReading of(Posture posture, Posture from, Tract tract, BenchBody body) {
        PostureResponse start = body.answer(from, tract).response();
        PathwayModel.Whole answer = body.answer(posture, tract);
        PostureResponse end = answer.response();
        double[] mean = difference(end.meanPositiveStrain(tract), start.meanPositiveStrain(tract), 100);
        var sites = new ArrayList<AtSite>();
        for (Site site : Site.of(tract.pathway()).values()) {
            if (onTract(site, tract)) {
                double[] strain = difference(end.strainAt(site), start.strainAt(site), 100);
                sites.add(new AtSite(
                        site.name(),
                        Spread.of(strain),
                        Spread.of(difference(end.glideMmAt(site), start.glideMmAt(site), 1)),
                        answer.profile()
                                .relativeTensionAt(body.model(tract.pathway()).arcM(site)),
                        Spread.of(mixed(strain, mean))));
            }
        }
        return new PostureReading(
                posture,
                from,
                tract,
                List.copyOf(sites),
                Spread.of(mean),
                PathwayModel.notModelled(posture, tract.pathway()));
    }

    /** Whether a site lies on the way of a tract: on the trunk that all share, or on its own end. */
    public static boolean onTract(Site site, Tract tract) {
        if (tract.pathway() == Pathway.FRONT) {
            return site.liesOn(tract);
        }
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
