package slipway.app.nerve;

import java.util.ArrayList;
import java.util.List;
import slipway.app.nerve.PostureReading.Spread;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.motion.Motion;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;

/**
 * What a motion does to the nerve at one site, over time, counted from its first posture.
 *
 * @param site where glide and load are read
 * @param moments evenly spaced in time
 */
record MotionReading(Site site, List<Moment> moments) {
    private static final int MOMENTS = 41;

    /**
     * One moment.
     *
     * @param loadPct load above the first posture, mixed as for a posture
     */
    record Moment(double seconds, Posture posture, Spread glideMm, Spread strainPct, Spread loadPct) {}

    static MotionReading of(Motion motion, Site site, Person person) {
        var model = new PathwayModel(person, FittedParameters.bundled().standardDraws());
        List<Posture> postures = motion.sampled(MOMENTS);
        List<PostureResponse> answers = model.respondAlong(postures);
        double[] glide0 = answers.get(0).glideMmAt(site);
        double[] strain0 = answers.get(0).strainAt(site);
        double[] mean0 = answers.get(0).meanPositiveStrain(site.tract());
        var moments = new ArrayList<Moment>();
        for (int i = 0; i < postures.size(); i++) {
            PostureResponse answer = answers.get(i);
            double[] strain = PostureReading.difference(answer.strainAt(site), strain0, 100);
            double[] mean = PostureReading.difference(answer.meanPositiveStrain(site.tract()), mean0, 100);
            moments.add(new Moment(
                    motion.seconds() * i / (postures.size() - 1),
                    postures.get(i),
                    Spread.of(PostureReading.difference(answer.glideMmAt(site), glide0, 1)),
                    Spread.of(strain),
                    Spread.of(PostureReading.mixed(strain, mean))));
        }
        return new MotionReading(site, List.copyOf(moments));
    }
}
