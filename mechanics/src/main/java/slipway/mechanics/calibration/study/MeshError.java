package slipway.mechanics.calibration.study;

import java.util.List;
import java.util.stream.IntStream;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.ParameterVector;
import slipway.mechanics.pathway.MeshDensity;
import slipway.mechanics.pathway.PathwayModel;

/**
 * Error of the mesh used for people, against one with every cell divided by {@link #REFINED}, over all sites.
 *
 * @param posture the posture
 * @param glideMm largest difference of glide, mm
 * @param glideSite where
 * @param strainPct largest difference of strain, percentage points
 * @param strainSite where
 */
public record MeshError(Posture posture, double glideMm, Site glideSite, double strainPct, Site strainSite) {
    /** Into how many parts the fine mesh divides every cell; at second order its own error is 1/64 of that shown. */
    public static final int REFINED = 8;

    private static final List<Posture> POSTURES = List.of(
            Posture.parse("hip 60"),
            Posture.parse("hip 80 ankle 15"),
            Posture.parse("hip 90 knee 90"),
            Posture.parse("spine 60 hip 90 knee 20 ankle 10 neck 45 other-hip 90 other-knee 90"));

    static List<MeshError> of(ParameterVector average) {
        DrawSet draw = DrawSet.single(average);
        List<PostureResponse> used = new PathwayModel(Person.STANDARD, draw).respondAlong(POSTURES);
        List<PostureResponse> fine =
                new PathwayModel(Person.STANDARD, draw, MeshDensity.STANDARD.refined(REFINED)).respondAlong(POSTURES);
        return IntStream.range(0, POSTURES.size())
                .mapToObj(i -> largest(POSTURES.get(i), used.get(i), fine.get(i)))
                .toList();
    }

    private static MeshError largest(Posture posture, PostureResponse used, PostureResponse fine) {
        Site glideSite = LoadFacts.SITE;
        Site strainSite = LoadFacts.SITE;
        double glide = 0;
        double strain = 0;
        for (Site site : Site.all().values()) {
            double glideHere = Math.abs(used.glideMmAt(site)[0] - fine.glideMmAt(site)[0]);
            double strainHere = 100 * Math.abs(used.strainAt(site)[0] - fine.strainAt(site)[0]);
            glideSite = glideHere > glide ? site : glideSite;
            strainSite = strainHere > strain ? site : strainSite;
            glide = Math.max(glide, glideHere);
            strain = Math.max(strain, strainHere);
        }
        return new MeshError(posture, glide, glideSite, strain, strainSite);
    }
}
