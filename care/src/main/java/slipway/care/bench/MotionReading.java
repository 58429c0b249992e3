package slipway.care.bench;

import java.util.ArrayList;
import java.util.List;
import slipway.mechanics.body.Posture;
import slipway.mechanics.motion.Motion;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;

/**
 * What a motion does to the nerve at one site, over time, counted from a posture.
 *
 * @param from the posture that values are counted from
 * @param site where glide and load are read
 * @param moments evenly spaced in time
 */
public record MotionReading(Posture from, Site site, List<Moment> moments) {
    private static final int MOMENTS = 41;

    /**
     * One moment.
     *
     * @param loadPct load above {@code from}, mixed as for a posture
     */
    public record Moment(double seconds, Posture posture, Spread glideMm, Spread strainPct, Spread loadPct) {}

    /** The reading of a body over the whole motion. */
    public static MotionReading of(Motion motion, Posture from, Site site, BenchBody body) {
        List<Posture> postures = motion.sampled(MOMENTS);
        PostureResponse start = body.answer(from, site.tract()).response();
        List<PostureResponse> answers = body.model(site.tract().pathway()).respondAlong(postures);
        double[] glide0 = start.glideMmAt(site);
        double[] strain0 = start.strainAt(site);
        double[] mean0 = start.meanPositiveStrain(site.tract());
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
        return new MotionReading(from, site, List.copyOf(moments));
    }
}
